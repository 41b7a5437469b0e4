import fc from 'fast-check';
import type { Fields } from '../../src/write/csv-append.ts';

/** A text as a builder may type it: trimmed and in one form of Unicode, as rows are before they are written. */
export const typed: fc.Arbitrary<string> = fc
  .oneof(
    fc.constantFrom('h-001', '2:30', '12.50', '1.234,56', 'yes', 'null', '~', '2025-03-02', '0x1F'),
    fc.constantFrom(
      '- a',
      '# no comment',
      'a: b',
      'a #b',
      '[x',
      '{y}',
      '*z',
      '&z',
      '!t',
      '| x',
      '...',
      '---',
    ),
    fc.constantFrom(
      'say "no"',
      "it's",
      'a,b;c',
      'tab\there',
      'two\nlines',
      'Höhe 3 µm',
      '50 % @ 3',
      '? q',
      '=1+2',
    ),
    fc.string({ unit: 'grapheme', maxLength: 12 }),
    fc.string({
      unit: fc.constantFrom('a', ' ', '"', "'", ',', ';', '\n', '\t', ':', '#', '-', '\\'),
      maxLength: 8,
    }),
  )
  .map((text) => text.trim().normalize('NFC'));

const filled = typed.filter((text) => text !== '');

/** Fields of a cost row, not all of them, in any order. */
export const costFields: fc.Arbitrary<Fields> = fc
  .record(
    {
      id: filled,
      date: filled,
      amount: filled,
      category: filled,
      phase: filled,
      what: filled,
      note: filled,
      parts: fc
        .array(fc.constantFrom('gib', 'nut', '3', 'a-b'), { minLength: 1, maxLength: 3 })
        .map((ids) => ids.join(' ')),
    },
    { requiredKeys: ['id'] },
  )
  .chain((row) => fc.shuffledSubarray(Object.entries(row), { minLength: Object.keys(row).length }))
  .map((entries) => Object.fromEntries(entries) as Fields);

/** Additions one after the other, each of one or more rows. */
export const additions: fc.Arbitrary<Fields[][]> = fc.array(
  fc.array(costFields, { minLength: 1, maxLength: 3 }),
  { minLength: 1, maxLength: 4 },
);

/** Whether a text became another by one piece that was put in and nothing else. */
export function onlyGained(before: string, after: string): boolean {
  let start = 0;
  while (start < before.length && before[start] === after[start]) start++;
  let end = 0;
  while (end < before.length - start && before.at(-1 - end) === after.at(-1 - end)) end++;
  return start + end === before.length;
}

/** The line ends of a text outside of quoted cells. */
export function lineEnds(text: string): Set<string> {
  const bare = text.replace(/"(?:[^"]|"")*"/g, '');
  return new Set(bare.match(/\r?\n/g) ?? []);
}
