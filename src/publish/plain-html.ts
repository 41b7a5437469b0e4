import {
  type DefaultTreeAdapterTypes,
  defaultTreeAdapter,
  parse,
  parseFragment,
  serialize,
} from 'parse5';
import type { Words } from '../words/words.ts';

type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.ChildNode;
type Parent = DefaultTreeAdapterTypes.ParentNode;

/** The page that a piece of HTML is from: its whole address, and the words that it is in. */
export interface Seen {
  readonly address: string;
  readonly words: Words;
}

/** Elements that a reader of feeds shows, and the attributes that each keeps. Anything else gives way to what is in it. */
const KEPT: Readonly<Record<string, readonly string[]>> = {
  ...Object.fromEntries(
    [
      ...[
        'p',
        'h2',
        'h3',
        'h4',
        'h5',
        'h6',
        'ul',
        'dl',
        'dt',
        'dd',
        'blockquote',
        'pre',
        'hr',
        'br',
      ],
      ...['figure', 'figcaption', 'table', 'caption', 'thead', 'tbody', 'tfoot', 'tr'],
      ...[
        'em',
        'strong',
        'b',
        'i',
        's',
        'del',
        'ins',
        'sub',
        'sup',
        'code',
        'kbd',
        'small',
        'q',
        'cite',
      ],
    ].map((name) => [name, []]),
  ),
  a: ['href'],
  img: ['src', 'alt', 'width', 'height'],
  ol: ['start', 'reversed'],
  li: ['value'],
  th: ['scope', 'colspan', 'rowspan'],
  td: ['colspan', 'rowspan'],
  time: ['datetime'],
  abbr: ['title'],
};

/** Elements that go with all that is in them. */
const DROPPED = new Set([
  ...['script', 'style', 'template', 'noscript', 'iframe', 'object', 'embed', 'form', 'button'],
  ...['select', 'textarea', 'link', 'meta', 'base', 'audio', 'video', 'canvas', 'head', 'title'],
]);

/**
 * The text of an entry, without its head, from its finished page, as HTML that can be shown anywhere: no script, style, class or
 * drawing, every address whole. A drawing becomes a link to the page, since its numbers stand in text or a table beside it.
 */
export function entryOfPage(html: string, page: Seen): string {
  const article = firstOf(parse(html), 'article');
  if (article === undefined) return '';
  for (const child of [...article.childNodes])
    if (child.nodeName === 'header') defaultTreeAdapter.detachNode(child);
  return plainOf(article, page);
}

/** A piece of HTML as it can be shown anywhere. */
export function plainHtml(html: string, page: Seen): string {
  return plainOf(parseFragment(html), page);
}

function plainOf(root: Parent, page: Seen): string {
  plainChildren(root, page);
  return serialize(root).trim();
}

function firstOf(parent: Parent, name: string): Element | undefined {
  for (const child of parent.childNodes) {
    if (!('tagName' in child)) continue;
    const found = child.tagName === name ? child : firstOf(child, name);
    if (found) return found;
  }
  return undefined;
}

function plainChildren(parent: Parent, page: Seen): void {
  for (const child of [...parent.childNodes]) {
    const instead = plain(child, page);
    for (const node of instead) {
      if (node === child) continue;
      defaultTreeAdapter.detachNode(node);
      defaultTreeAdapter.insertBefore(parent, node, child);
    }
    if (!instead.includes(child)) defaultTreeAdapter.detachNode(child);
  }
}

/** What stands for a node. */
function plain(node: Node, page: Seen): readonly Node[] {
  if (node.nodeName === '#text') return [node];
  if (!('tagName' in node)) return [];
  const instead = replaced(node, page);
  if (instead !== undefined) return instead;
  plainChildren(node, page);
  // A hazard note stays set apart from the text around it.
  if (node.tagName === 'aside') node.nodeName = node.tagName = 'blockquote';
  const kept = KEPT[node.tagName];
  if (kept === undefined) return [...node.childNodes];
  node.attrs = node.attrs.flatMap(({ name, value }) => {
    if (!kept.includes(name)) return [];
    const whole = name === 'href' || name === 'src' ? wholeAddress(value, page) : value;
    return whole === undefined ? [] : [{ name, value: whole }];
  });
  // A link without an address, or a picture without one, is none.
  if (node.tagName === 'a' && node.attrs.length === 0) return [...node.childNodes];
  if (node.tagName === 'img' && attribute(node, 'src') === undefined) return [];
  return [node];
}

/** Elements that are neither kept nor opened. */
function replaced(element: Element, page: Seen): readonly Node[] | undefined {
  if (DROPPED.has(element.tagName)) return [];
  if (attribute(element, 'aria-hidden') === 'true') return [];
  if (element.tagName === 'input')
    return [textNode(attribute(element, 'checked') === undefined ? '☐ ' : '☑ ')];
  if (element.tagName === 'details') return opened(element, page);
  if (element.tagName === 'svg') return [drawingLink(attribute(element, 'aria-label'), page)];
  return element.tagName === 'math' ? [textNode(mathText(element))] : undefined;
}

/** Folded rows behind a number stay on the page: what is to be seen unopened is all that a feed needs. */
function opened(details: Element, page: Seen): readonly Node[] {
  const summary = details.childNodes.find((child) => child.nodeName === 'summary');
  if (summary === undefined || !('tagName' in summary)) return [];
  plainChildren(summary, page);
  return [...summary.childNodes];
}

function drawingLink(label: string | undefined, { address, words }: Seen): Node {
  const link = parseFragment('<p><a></a></p>').childNodes[0] as Element;
  const [anchor] = link.childNodes as Element[];
  if (anchor) {
    anchor.attrs = [{ name: 'href', value: address }];
    const { drawing, drawingOf } = words.log.sharing.feed;
    defaultTreeAdapter.insertText(anchor, label ? drawingOf(label) : drawing);
  }
  return link;
}

/** Addresses that a reader may follow, whole; undefined for any other scheme. */
function wholeAddress(value: string, { address }: Seen): string | undefined {
  if (!URL.canParse(value, address)) return undefined;
  const { href, protocol } = new URL(value, address);
  return ['http:', 'https:', 'mailto:'].includes(protocol) ? href : undefined;
}

function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((item) => item.name === name)?.value;
}

function textNode(value: string): Node {
  return defaultTreeAdapter.createTextNode(value);
}

/** A formula in one line, as a reader without MathML has it. */
function mathText(node: Node): string {
  if ('value' in node) return node.value;
  if (!('tagName' in node)) return '';
  const [first = '', second = ''] = node.childNodes.map(mathText);
  if (node.tagName === 'mfrac') return `(${first})/(${second})`;
  if (node.tagName === 'msup') return `${first}^${second}`;
  if (node.tagName === 'msub') return `${first}_${second}`;
  const inner = node.childNodes.map(mathText).join('');
  return node.tagName === 'msqrt' ? `√(${inner})` : inner;
}
