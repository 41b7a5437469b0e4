import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { z } from 'zod';
import { homeKinds, listKinds, singleKinds } from '../../src/model/kinds.ts';
import { readRecords } from '../../src/read/content.ts';
import type { Place } from '../../src/read/problem.ts';
import { everyKind } from './every-kind.ts';
import { bytesOf, openWith, removeFolder, soundFolder } from './open-mutated.ts';

const CASES = Number(process.env.WITNESSMARK_FUZZ ?? 5_000) / 10;

/** What can't be right in a field, by what the field reads. */
const WRONG: Readonly<Record<string, readonly string[]>> = {
  id: ['No-Such', 'a--b', 'x y z'],
  ref: ['no-such-thing'],
  text: ['=1+1', '@x', 'a\u0007b'],
  date: ['2025-02-30', '1 of March', '20250301', '9999-01-01'],
  hours: ['long', '2:75', '9999999:00'],
  quantity: ['12 blorps', '12', 'mm', `${'9'.repeat(400)} mm`],
  unit: ['blorps'],
  word: ['nosuchword'],
  amount: ['much', '12.5.0', '12 XYZ', '1e999999', '9'.repeat(400)],
  number: ['one', '-1', '0x10', '1e5', '9'.repeat(400)],
  value: ['one', '1e5', '0.1 mm', '9'.repeat(400)],
  percent: ['much', '-5 %', '99999 %'],
  flag: ['yes'],
  moment: ['late', '4:75'],
  address: ['http://x.example/', 'javascript:x', 'x'],
  currency: ['XYZ', 'gbp'],
  portion: ['no-such-thing', 'gib:', 'gib:x'],
  link: ['no-such-thing', 'teardown:x'],
};

interface Spot extends Place {
  readonly wrong: readonly string[];
}

/** Every value of the sound files that has a type, with where it stands and what would be wrong there. */
function spots(): Spot[] {
  return Object.entries(everyKind).flatMap(([file, text]) => {
    const stem = /([a-z]+)(?:-\w+)?\.(?:csv|yaml)$/.exec(file)?.[1] ?? '';
    const schema: z.ZodObject | undefined = {
      ...listKinds,
      ...homeKinds,
      project: singleKinds.project,
    }[stem as 'hours'];
    if (schema === undefined) return [];
    const { records } = readRecords(text, { kind: stem as 'hours', file });
    return records.flatMap((record) =>
      Object.entries(record.value).flatMap(([field, value]) => {
        const { ref, reads = '' } = factsOf(schema.shape[field]);
        const wrong = WRONG[ref !== undefined && reads === 'id' ? 'ref' : reads];
        return typeof value === 'string' && !value.includes('\n') && wrong
          ? [{ ...record.placeOf([field]), wrong }]
          : [];
      }),
    );
  });
}

function factsOf(field: unknown): { ref?: string; reads?: string } {
  let inner = field as z.ZodType | undefined;
  while (inner !== undefined) {
    const facts = inner.meta() as { ref?: string; reads?: string; item?: z.ZodType } | undefined;
    if (facts?.reads !== undefined) return facts;
    inner = facts?.item ?? (inner as unknown as { unwrap?: () => z.ZodType }).unwrap?.();
  }
  return {};
}

/** Puts another value where one starts. */
function put(text: string, { file, line, column }: Place, value: string): string {
  const lines = text.split('\n');
  const row = lines[line - 1] ?? '';
  const rest = row.slice(column - 1);
  const [old = ''] = endOf(file, row).exec(rest) ?? [];
  const written = file.endsWith('.csv') ? value : JSON.stringify(value);
  return lines
    .with(line - 1, row.slice(0, column - 1) + written + rest.slice(old.length))
    .join('\n');
}

/** What a value is, from its first character on: a whole cell, or the rest of a line of YAML. */
function endOf(file: string, row: string): RegExp {
  if (file.endsWith('.csv')) return /^(?:"[^"]*"|[^,]*)/;
  return row.startsWith('- {') ? /^[^,}]*[^,} ]/ : /^.*/;
}

let folder = '';
beforeAll(async () => {
  folder = await soundFolder();
});
afterAll(() => removeFolder(folder));

test('a value that can’t be right is pointed at where it stands', {
  timeout: CASES * 1_000 + 60_000,
}, async () => {
  const all = spots();
  expect(all.length).toBeGreaterThan(200);
  const spot = fc
    .constantFrom(...all)
    .chain((at) => fc.record({ at: fc.constant(at), value: fc.constantFrom(...at.wrong) }));
  await fc.assert(
    fc.asyncProperty(spot, async ({ at, value }) => {
      const text = put(everyKind[at.file] ?? '', at, value);
      const { problems } = await openWith(folder, new Map([[at.file, bytesOf(text)]]));
      const places = problems.map(({ file, line, column }) => `${file}:${line}:${column}`);
      expect(places, text).toContain(`${at.file}:${at.line}:${at.column}`);
    }),
    { numRuns: CASES },
  );
});

const HEAD = /^[^\n]*/;

test.each([
  ['press/ledger/hours.csv', /helper-one/, 'helper-one,more', 'csv/ragged', 3],
  ['press/ledger/hours.csv', HEAD, 'id,date,hours,phase,work,wo,what', 'field/unknown', 1],
  ['press/ledger/hours.csv', /Cleaned/, '"Cleaned', 'csv/open-quote', 2],
  ['press/ledger/costs-more.yaml', /tax: inside/, 'tacks: inside', 'field/unknown', 4],
  ['press/ledger/costs-more.yaml', /tax: inside/, 'date: 2025-03-20', 'yaml/duplicate-key', 4],
  ['press/phases.yaml', /name: Rebuild/, 'name: *rebuild', 'yaml/alias', 8],
  ['press/phases.yaml', /name: Rebuild/, 'name: "Rebuild', 'yaml/broken', undefined],
  [
    'press/entries/2025-04-13-the-ram-slides.mdx',
    /of="ram-play"/,
    'of="no-such"',
    'id/unknown',
    16,
  ],
  [
    'press/entries/2025-04-13-the-ram-slides.mdx',
    /spec:ram-play/,
    'spec:no-such',
    'id/unknown',
    16,
  ],
  ['press/entries/2025-04-13-the-ram-slides.mdx', /row:c-003/, 'row:no-such', 'id/unknown', 18],
  [
    'press/entries/2025-04-13-the-ram-slides.mdx',
    /phase: rebuild/,
    'phase: rebiuld',
    'id/unknown',
    4,
  ],
] as const)('%s, where %s became %s, is refused there', async (file, old, now, code, line) => {
  const text = (everyKind[file] ?? '').replace(old, now);
  const { problems } = await openWith(folder, new Map([[file, bytesOf(text)]]));
  const found = problems.find((problem) => problem.code === code);
  expect(found?.file, JSON.stringify(problems)).toBe(file);
  if (line !== undefined) expect(found?.line).toBe(line);
});
