import { describe, expect, it, test } from 'vitest';
import { described } from '../../src/publish/data/described.ts';
import { ledgerTables } from '../../src/publish/data/ledger-tables.ts';
import { tableOf } from '../../src/publish/data/table.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf } from '../book/project-of.ts';

const project = projectOf({});

describe('the tables in words', () => {
  test('have a text of ours for every table and every column, none left to the schema of its field', () => {
    const texts = ledgerTables(project, wordsOf('en-XA')).flatMap(({ name, about, columns }) => [
      [name, about],
      ...columns.map((column) => [`${name}.${column.name}`, column.description]),
    ]);
    expect(texts.length).toBeGreaterThan(200);
    expect(texts.filter(([, text]) => !text?.startsWith('⟦'))).toEqual([]);
  });

  test('differ by language in their texts alone', () => {
    const bare = (language: string) =>
      ledgerTables(project, wordsOf(language)).map(({ about, columns, ...table }) => ({
        ...table,
        columns: columns.map(({ description, ...column }) => column),
      }));
    expect(bare('de')).toEqual(bare('en'));
  });

  const columnsOf = (language: string, name: string) =>
    Object.fromEntries(
      (
        ledgerTables(project, wordsOf(language)).find((table) => table.name === name)?.columns ?? []
      ).map((column) => [column.name, column.description]),
    );

  test('say of a list whose it is, and what a column means in this table', () => {
    expect(columnsOf('en', 'cost_phases')).toMatchObject({
      cost: 'id in costs',
      phase: 'the phase that bears it',
    });
    expect(columnsOf('de', 'hours')).toMatchObject({
      phase: 'eine Kennung aus phases',
      source: 'Maschine, an der gearbeitet wurde, wenn es nicht die im Aufbau ist',
    });
    expect(columnsOf('de', 'costs')).toMatchObject({ mass_unit: 'Einheit von mass' });
  });
});

it('falls back on what the schema says of a field that the words do not know', () => {
  const column = { type: 'string', cell: () => 'x' } as const;
  const columns = [
    { ...column, name: 'brand-new', description: 'a field of tomorrow' },
    { ...column, name: 'nameless' },
  ];
  const table = described(tableOf('work', { columns, records: [{}] }), wordsOf('de'));
  expect(table.columns.map(({ description }) => description)).toEqual([
    'a field of tomorrow',
    'nameless',
  ]);
});
