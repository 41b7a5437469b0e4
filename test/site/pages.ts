import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';

export type Node = DefaultTreeAdapterTypes.Node;
export type Element = DefaultTreeAdapterTypes.Element;

/** A page of a built site, parsed as a browser would. */
export interface Page {
  /** Path inside the site's folder, with `/`. */
  readonly file: string;
  /** Its public address. */
  readonly url: string;
  readonly root: DefaultTreeAdapterTypes.Document;
}

/** Every file of a folder, with `/` between names, in order. */
export function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => relative(folder, join(item.parentPath, item.name)).replaceAll(sep, '/'))
    .sort();
}

/** Every page of a site that is published at `address`. */
export function readPages({ folder, address }: { folder: string; address: string }): Page[] {
  return filesOf(folder)
    .filter((file) => file.endsWith('.html'))
    .map((file) => ({
      file,
      url: new URL(file.replace(/index\.html$/, ''), address).href,
      root: parse(readFileSync(join(folder, file), 'utf8')),
    }));
}

/** Elements under a node, in order of the page: `a`, `.tally`, `section.tally`, `#id`, or `*` for all. */
export function select(node: Node, selector: string): Element[] {
  const [, name = '', mark = '', word = ''] =
    /^(\*|[a-z0-9]*)(?:([.#])(.+))?$/.exec(selector) ?? [];
  return elementsOf(node).filter(
    (element) =>
      (name === '' || name === '*' || element.tagName === name) &&
      (mark !== '#' || attribute(element, 'id') === word) &&
      (mark !== '.' || (attribute(element, 'class') ?? '').split(/\s+/).includes(word)),
  );
}

function elementsOf(node: Node): Element[] {
  const children: readonly Node[] = 'childNodes' in node ? node.childNodes : [];
  return children.flatMap((child) => [
    ...('tagName' in child ? [child] : []),
    ...elementsOf(child),
  ]);
}

/** An attribute's value, or undefined when the element has none of that name. */
export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((item) => item.name === name)?.value;
}

/** All text under a node, with runs of white space made one space. */
export function textOf(node: Node): string {
  const text = (part: Node): string => {
    if ('value' in part) return part.value;
    return 'childNodes' in part ? part.childNodes.map(text).join('') : '';
  };
  return text(node).replace(/\s+/g, ' ').trim();
}
