import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import { demoData } from './demo-data.ts';

const demo = await demoData();

/** Whether a book fits the schema that is published beside it, by ajv in its strict mode. */
function check(schema: string | undefined, book: unknown): readonly [boolean, unknown] {
  const ajv = new Ajv2020({ strict: true });
  addFormats.default(ajv);
  const fits = ajv.compile(JSON.parse(schema ?? ''));
  return [fits(book), fits.errors];
}

type Book = {
  $schema: string;
  project: Record<string, unknown>;
  tables: Record<string, Record<string, unknown>[]>;
  figures: Record<
    string,
    { total: { value: number; rows: string[] }; groups: { value: number; rows: string[] }[] }
  >;
};
const read = (text: string | undefined) => JSON.parse(text ?? '') as Book;

describe.each(demo)('the whole book of $id', ({ files, made, project }) => {
  const book = read(files['book.json']);

  test('fits the JSON Schema that it names', () => {
    expect(check(files['book.schema.json'], book)).toEqual([true, null]);
    expect(JSON.parse(files['book.schema.json'] ?? '').$id).toBe(book.$schema);
  });

  test('has every row of every table', () => {
    const sizes = made.tables.map(({ table }) => [table.name, table.rows.length]);
    expect(Object.entries(book.tables).map(([name, rows]) => [name, rows.length])).toEqual(sizes);
  });

  test('has totals whose rows are in it and add up', () => {
    const minutes = new Map(book.tables.hours?.map(({ id, minutes }) => [id, Number(minutes)]));
    const counted = new Map(book.tables.costs?.map(({ id, counted }) => [id, Number(counted)]));
    const sumOf = (rows: readonly string[], sizes: ReadonlyMap<unknown, number>) =>
      rows.reduce((sum, id) => sum + (sizes.get(id) ?? Number.NaN), 0);
    const { hoursByPhase, costsByCategory } = book.figures;
    for (const { value, rows } of [hoursByPhase?.total, ...(hoursByPhase?.groups ?? [])].flatMap(
      (f) => f ?? [],
    ))
      expect(sumOf(rows, minutes)).toBe(value);
    for (const { value, rows } of [
      costsByCategory?.total,
      ...(costsByCategory?.groups ?? []),
    ].flatMap((f) => f ?? []))
      expect(sumOf(rows, counted)).toBe(value);
    expect(costsByCategory?.total.value).toBe(project.now.costsByCategory.total.value.minor);
  });
});

describe('the schema of the whole book', () => {
  const [data] = demo;
  const changes: readonly (readonly [string, (book: Book) => void])[] = [
    ['a field that it does not know', (book) => Object.assign(book.project, { identity: 'FL11' })],
    ['a missing table', (book) => delete book.tables.rates],
    ['a row without its day', (book) => delete book.tables.hours?.[0]?.date],
    [
      'a day that there is not',
      (book) => Object.assign(book.tables.hours?.[0] ?? {}, { date: '2025-02-30' }),
    ],
    [
      'an amount that is a number',
      (book) => Object.assign(book.tables.costs?.[0] ?? {}, { amount: 12.5 }),
    ],
    [
      'a total that is not whole',
      (book) => Object.assign(book.figures.hoursByPhase?.total ?? {}, { value: 1.5 }),
    ],
  ];
  test.each(changes)('refuses %s', (_, change) => {
    const book = read(data?.files['book.json']);
    change(book);
    expect(check(data?.files['book.schema.json'], book)[0]).toBe(false);
  });
});
