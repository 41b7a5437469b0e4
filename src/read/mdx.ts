import { mdxToMdast } from 'satteri';
import { hasManySigns, parseElsewhere } from './mdx-apart.ts';
import { type Place, type Problem, problemAt } from './problem.ts';

/** A property as written on a component: its literal value, or undefined where it isn't a literal. */
export interface WrittenProp extends Place {
  readonly name: string;
  readonly literal: PropValue | undefined;
  readonly source: string;
}

export type PropValue = string | number | boolean | readonly string[];

/** A component as it stands in an entry. */
export interface UsedComponent extends Place {
  readonly name: string;
  readonly props: readonly WrittenProp[];
}

/** A link as it stands in an entry. */
export interface UsedLink extends Place {
  readonly url: string;
}

/** What an entry's text uses, with places; the words themselves are left to the renderer. */
export interface EntryBody {
  readonly components: readonly UsedComponent[];
  readonly links: readonly UsedLink[];
  readonly words: number;
}

interface MdxNode {
  readonly type: string;
  readonly name?: string | null;
  readonly url?: string;
  readonly value?: string;
  readonly attributes?: readonly {
    readonly type: string;
    readonly name?: string;
    readonly value?: unknown;
  }[];
  readonly children?: readonly MdxNode[];
  readonly position?: { readonly start: { readonly line: number; readonly column: number } };
}

/** Deeper than any page needs. */
const MAX_DEPTH = 60;

/**
 * Reads an entry's MDX with the parser that will render it, so that both see the same page.
 * `text` is the whole file, with its front matter or blanks in place of it, so that lines count as in an editor.
 */
export function readMdx(text: string, file: string): { body: EntryBody; problems: Problem[] } {
  const components: UsedComponent[] = [];
  const links: UsedLink[] = [];
  const problems: Problem[] = [];
  const lines = text.split('\n');
  let words = 0;

  function walk(node: MdxNode, depth: number): void {
    const place = placeOf(node, file);
    if (depth > MAX_DEPTH) {
      problems.push(problemAt(place, 'mdx/too-deep', `nested deeper than ${MAX_DEPTH} levels`));
      return;
    }
    if (node.type === 'mdxjsEsm')
      problems.push(
        problemAt(
          place,
          'mdx/import',
          'an entry imports and exports nothing',
          'remove the line; every component is there already',
        ),
      );
    if (node.type === 'mdxFlowExpression' || node.type === 'mdxTextExpression') {
      if (!isComment(node.value ?? ''))
        problems.push(
          problemAt(
            place,
            'mdx/expression',
            `the expression {${node.value}} is not run here`,
            'write the text itself, or \\{ for a brace',
          ),
        );
    }
    if (node.type.startsWith('image') || (node.type.startsWith('mdxJsx') && node.name === 'img'))
      problems.push(
        problemAt(
          place,
          'mdx/picture',
          'a picture stands in an entry as <Photo>, which publishes no original',
          'write <Photo file="…" alt="…" caption="…" />',
        ),
      );
    if (node.type.startsWith('mdxJsx') && node.name)
      components.push(componentOf(node, place, lines));
    if ((node.type === 'link' || node.type === 'definition') && node.url !== undefined)
      links.push({ ...place, url: node.url });
    if (node.type === 'text')
      words += node.value?.split(/\s+/).filter((word) => /\w/.test(word)).length ?? 0;
    for (const child of node.children ?? []) walk(child, depth + 1);
  }

  try {
    if (hasManySigns(text)) parseElsewhere(text);
    walk(mdxToMdast(text, {}) as unknown as MdxNode, 0);
  } catch (error) {
    problems.push(brokenMdx(error as Error, file, lines));
  }
  return { body: { components, links, words }, problems };
}

/** One comment or several, with nothing of a program before, between or after them. */
function isComment(program: string): boolean {
  return program.trim() !== '' && program.replace(/\/\*[\s\S]*?\*\//g, '').trim() === '';
}

function placeOf(node: MdxNode, file: string): Place {
  return { file, line: node.position?.start.line ?? 1, column: node.position?.start.column ?? 1 };
}

function componentOf(node: MdxNode, place: Place, lines: readonly string[]): UsedComponent {
  const props = (node.attributes ?? []).map((attribute, index): WrittenProp => {
    const name = attribute.name ?? '…';
    const source =
      typeof attribute.value === 'object' && attribute.value !== null
        ? `{${(attribute.value as { value: string }).value}}`
        : JSON.stringify(attribute.value ?? true);
    const literal = attribute.type === 'mdxJsxAttribute' ? literalOf(attribute.value) : undefined;
    const at = index < MOST_LOOKED_FOR ? findProp(place, name, lines) : place;
    return { ...at, name, source, literal };
  });
  return { ...place, name: node.name ?? '', props };
}

/** No component has so many properties, and no property stands so far from the start of its component. */
const MOST_LOOKED_FOR = 100;
const FARTHEST = 5_000;

/** The parser gives no place for a property, so its name is looked for from its component on, outside of all values. */
function findProp(from: Place, name: string, lines: readonly string[]): Place {
  const text = lines
    .slice(from.line - 1, from.line + 40)
    .map((line, index) => line.slice(index === 0 ? from.column - 1 : 0).slice(0, FARTHEST))
    .join('\n')
    .slice(0, FARTHEST);
  const tokens = /"[^"]*"?|'[^']*'?|[{}]|[\w$:.-]+/g;
  tokens.lastIndex = 1;
  let depth = 0;
  // The first word is the component's own name.
  tokens.exec(text);
  for (let match = tokens.exec(text); match !== null; match = tokens.exec(text)) {
    if (match[0] === '{') depth++;
    if (match[0] === '}') depth--;
    if (depth > 0 || match[0] !== name) continue;
    const before = text.slice(0, match.index).split('\n');
    const indent = before.length === 1 ? from.column - 1 : 0;
    const column = indent + (before.at(-1)?.length ?? 0) + 1;
    return { file: from.file, line: from.line + before.length - 1, column };
  }
  return from;
}

function literalOf(value: unknown): PropValue | undefined {
  if (value === null || value === undefined) return true;
  if (typeof value === 'string') return value;
  return readLiteral((value as { value: string }).value.trim());
}

/** Reads `3`, `true`, `"x"`, `'x'` or a list of quoted texts; anything else would be a program. */
function readLiteral(source: string): PropValue | undefined {
  if (/^-?\d+(\.\d+)?$/.test(source)) return Number(source);
  if (source === 'true' || source === 'false') return source === 'true';
  const quoted = /^(["'])((?:(?!\1)[^\\])*)\1$/.exec(source);
  if (quoted) return quoted[2];

  const list = /^\[([\s\S]*)\]$/.exec(source);
  if (!list) return undefined;
  const items = (list[1] ?? '').split(',').map((item) => item.trim());
  if (items.at(-1) === '') items.pop();
  const texts = items.map(readLiteral);
  return texts.every((item): item is string => typeof item === 'string') ? texts : undefined;
}

function brokenMdx(error: Error, file: string, lines: readonly string[]): Problem {
  if (error instanceof RangeError)
    return problemAt({ file, line: 1, column: 1 }, 'mdx/too-deep', 'nested too deeply to be read');
  const match = /^(\d+):(\d+): ([\s\S]*?)(?: \((?:mdx|micromark)[^)]*\))?$/.exec(
    error.message.trim(),
  );
  const place = { file, line: Number(match?.[1] ?? 1), column: Number(match?.[2] ?? 1) };
  const said = (match?.[3] ?? error.message).split('\n')[0] ?? '';
  return problemAt(
    place,
    'mdx/broken',
    `broken MDX: ${said.charAt(0).toLowerCase()}${said.slice(1)}`,
    mdxHint(said, (lines[place.line - 1] ?? '').slice(place.column - 1)),
  );
}

/** What to type instead, by what the reader says and what stands there. */
function mdxHint(said: string, text: string): string {
  if (text.startsWith('<!--')) return 'write {/* … */} around a note that readers do not see';
  const [, name, value] = /^<[A-Z][\w]*[^>]*?\s([\w-]+)=([^"'{\s/>]+)/.exec(text) ?? [];
  if (name !== undefined) return `write ${name}="${value}"`;
  if (/closing tag/i.test(said)) return 'close the component: <Name … />';
  if (/expression|brace|acorn/i.test(said))
    return 'write \\{ for a brace in text, and close every {…}';
  return 'write &lt; for a "less than" in text, and close every <Name … />';
}
