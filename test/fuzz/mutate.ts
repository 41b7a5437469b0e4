import type { Draw } from './draw.ts';
import { NASTY_BYTES, NASTY_VALUES } from './nasty.ts';

/** What a mutation has to go by besides the text: the name of the file and what the other files hold. */
export interface Around {
  readonly file: string;
  readonly others: readonly string[];
}

type Mutation = (text: string, draw: Draw, around: Around) => string;

const lined =
  (change: (lines: string[], draw: Draw) => string[]): Mutation =>
  (text, draw) =>
    change(text.split('\n'), draw).join('\n');

/** Puts a text in place of a match, chosen among all. */
const matched =
  (pattern: RegExp, change: (found: string, draw: Draw) => string): Mutation =>
  (text, draw) => {
    const found = [...text.matchAll(pattern)];
    if (found.length === 0) return text;
    const { 0: match, index } = draw.of(found);
    return text.slice(0, index) + change(match, draw) + text.slice(index + match.length);
  };

/** Mutations that know only characters and lines. */
const ofAnyText: readonly Mutation[] = [
  (text, draw) => text.slice(0, draw.below(text.length + 1)),
  (text, draw) => text.slice(draw.below(text.length + 1)),
  (text, draw) => {
    const at = draw.below(text.length + 1);
    return text.slice(0, at) + draw.of(NASTY_VALUES) + text.slice(at);
  },
  (text, draw) => {
    const at = draw.below(text.length + 1);
    return text.slice(0, at) + text.slice(at + 1 + draw.below(8));
  },
  lined((lines, draw) => lines.toSpliced(draw.below(lines.length), 1)),
  lined((lines, draw) => {
    const line = draw.of(lines);
    return lines.toSpliced(draw.below(lines.length + 1), 0, line);
  }),
  lined((lines, draw) => {
    const [at, to] = [draw.below(lines.length), draw.below(lines.length)];
    return lines.with(at, lines[to] ?? '').with(to, lines[at] ?? '');
  }),
  lined((lines, draw) => {
    const at = draw.below(lines.length);
    return lines.toSpliced(
      at,
      2,
      `${lines[at] ?? ''}${draw.of(['', ' ', ',', ': '])}${lines[at + 1] ?? ''}`,
    );
  }),
  lined((lines, draw) => {
    const at = draw.below(lines.length);
    return lines.with(
      at,
      draw.of([' ', '  ', '\t', '    ', ' '.repeat(300), '\u00a0', '- ', '# ', '> ']) +
        (lines[at] ?? ''),
    );
  }),
  lined((lines, draw) => {
    const at = draw.below(lines.length);
    return lines.with(at, (lines[at] ?? '').trimStart());
  }),
  lined((lines, draw) => lines.toSpliced(draw.below(lines.length + 1), 0, draw.of(NASTY_VALUES))),
  lined((lines, draw) => {
    const at = draw.below(lines.length);
    return lines.toSpliced(at, 0, ...Array<string>(100).fill(lines[at] ?? ''));
  }),
  (text, draw) =>
    draw.of([
      '',
      '\n',
      ' ',
      '\ufeff',
      '[]',
      '{}',
      '---\n',
      '---\n---\n',
      '"',
      '\u0000',
      '#\n',
      ',\n',
      '- \n',
      'null\n',
    ]) + (draw.below(2) === 0 ? '' : text),
  (text) => text.replaceAll('\n', '\r\n'),
  (text) => text.replaceAll('\n', '\r'),
  (text) => `\ufeff${text}`,
  (text) => text + text,
  (_, draw, { others }) => draw.of(others),
  matched(/\d+/g, (_, draw) => draw.of(NASTY_VALUES)),
  matched(/\d+/g, (found, draw) =>
    draw.of([`-${found}`, `${found}0`, `${found}.5`, '0', `1${found}`, found.slice(1)]),
  ),
  matched(/\d{4}-\d\d-\d\d/g, (_, draw) =>
    draw.of([
      '2025-06-16',
      '2024-01-01',
      '9999-12-31',
      '0001-01-01',
      '2025-02-30',
      '1 March 2025',
      '2025-03-01',
    ]),
  ),
  matched(/[a-z]+(-[a-z0-9]+)*/g, (_, draw) => draw.of(NASTY_VALUES)),
  matched(/[a-z]+-[a-z0-9]+/g, (_, draw) =>
    draw.of([
      'h-001',
      'c-001',
      'c-002',
      'r-001',
      'o-1',
      'p-1',
      'ca-1',
      'wa-1',
      'f-001',
      'ram-play',
      'play-left',
    ]),
  ),
  matched(/["'`]/g, (_, draw) => draw.of(['', '"', "'", '""', '\\"'])),
  matched(/[[\]{}()<>]/g, (_, draw) => draw.of(['', '[', ']', '{', '}', '<', '>', '[[', '}}'])),
];

/** Mutations that know where a YAML record has its keys and values. */
const ofYaml: readonly Mutation[] = [
  matched(/: .+$/gm, (_, draw) => `: ${draw.of(NASTY_VALUES)}`),
  matched(
    /: .+$/gm,
    (found, draw) =>
      `: ${draw.of([JSON.stringify, (value: string) => `[${value}]`, (value: string) => `{a: ${value}}`, (value: string) => `&a ${value}`, (value: string) => `!!str ${value}`, (value: string) => `|\n    ${value}`])(found.slice(2))}`,
  ),
  matched(/[\w-]+(?=:( |$))/gm, (_, draw) =>
    draw.of([
      'no-such-field',
      'id',
      'date',
      'corrects',
      'because',
      'withhold',
      '? x',
      '__proto__',
      '"id"',
      '<<',
      'parts',
      'note',
    ]),
  ),
  matched(/^- /gm, (_, draw) => draw.of(['', '-', '  ', '- - ', '-\n  ', '? '])),
  matched(/^ +[\w-]+:.*\n/gm, () => ''),
  matched(/^ +[\w-]+:.*\n/gm, (found) => found + found),
  matched(/: .+$/gm, () => ': *a'),
  (text, draw) =>
    `${text}${draw.of(['  corrects: c-002\n  because: So\n', '  recorded: 2025-06-20\n', '  withhold: what who\n', '- id: new\n', '- &a [*a]\n', '- {}\n', '- []\n', '- x\n', '...\n', '%YAML 1.2\n---\n'])}`,
];

const cells = (line: string) => line.split(',');

const ofRow = (change: (row: string[], draw: Draw) => string[]): Mutation =>
  lined((lines, draw) => {
    const at = draw.below(lines.length);
    return lines.with(at, change(cells(lines[at] ?? ''), draw).join(','));
  });

/** Mutations that know where a table has its rows and cells. */
const ofTable: readonly Mutation[] = [
  ofRow((row, draw) => row.with(draw.below(row.length), draw.of(NASTY_VALUES))),
  ofRow((row, draw) => row.toSpliced(draw.below(row.length), 1)),
  ofRow((row, draw) => {
    const at = draw.below(row.length);
    return row.toSpliced(at, 0, row[at] ?? '');
  }),
  ofRow((row, draw) => {
    const [a, b] = [draw.below(row.length), draw.below(row.length)];
    return row.with(a, row[b] ?? '').with(b, row[a] ?? '');
  }),
  ofRow((row, draw) =>
    row.with(draw.below(row.length), draw.of(['"', '""', '"a"b', '"a\nb"', ' "x"', '"x" '])),
  ),
  lined((lines, draw) => {
    const at = draw.below(cells(lines[0] ?? '').length);
    return lines.map((line) => cells(line).toSpliced(at, 1).join(','));
  }),
  lined(([header = '', ...rows], draw) => [
    `${header},${draw.of(['', 'id', 'note', 'corrects', 'no-such', 'a.b', 'id.x', '__proto__', 'withhold', 'recorded'])}`,
    ...rows.map((row) => (row === '' ? row : `${row},${draw.of(NASTY_VALUES)}`)),
  ]),
  (text, draw) => text.replaceAll(',', draw.of([';', '\t', '|', ',,', ', '])),
];

/** Mutations that know what an entry is made of. */
const ofEntry: readonly Mutation[] = [
  matched(/="[^"]*"/g, (_, draw) =>
    draw.of(['', '="gone"', '={x}', '={["a"]}', '={1}', '=""', '="', "='", '={`a`}', '={[]}']),
  ),
  matched(/<\/?[A-Z]\w*/g, (_, draw) =>
    draw.of(['<', '</', '<Gone', '<p', '<script', '<Spec', '<a.b', '<$x', '<Tally', '</Spec']),
  ),
  matched(/\]\([^)]*\)/g, (_, draw) =>
    draw.of([
      ']',
      '](',
      '](part:gone)',
      '](javascript:x)',
      '](https://x.example)',
      '](<>)',
      '](entry:x)',
      '](#x)',
    ]),
  ),
  matched(
    /\n\n/g,
    (_, draw) =>
      `\n\n${draw.of(['import x from "y"', 'export const x = 1', '{x}', '{/* c */}', '{/* a */ x /* b */}', '<!-- x -->', '<p>', '# {', '> '.repeat(80), '| a |\n| - |', '```\n{x}\n```', '    code', '$x$', ':::note', '---', '+++', '[x]: y'])}\n\n`,
  ),
  ...ofYaml,
];

/** Changes a text as a slip, a tool or somebody with bad intent might. */
export function mutate(text: string, draw: Draw, around: Around): string {
  const own =
    { yaml: ofYaml, csv: ofTable, mdx: ofEntry }[around.file.split('.').at(-1) ?? ''] ?? [];
  const known = draw.below(2) === 0 ? ofAnyText : own;
  return draw.of(known)(text, draw, around);
}

/** Breaks the bytes of a text, now and then; most texts stay as they are. */
export function mutateBytes(bytes: Uint8Array, draw: Draw): Uint8Array {
  const choice = draw.below(40);
  const at = draw.below(bytes.length + 1);
  if (choice > 2) return bytes;
  if (choice === 2) return Uint8Array.from({ length: 200 }, () => draw.below(256));
  const put = choice === 1 ? [draw.below(256)] : draw.of(NASTY_BYTES);
  return new Uint8Array([...bytes.subarray(0, at), ...put, ...bytes.subarray(at)]);
}
