import type { Words } from '../../words/words.ts';
import type { BareColumn, BareTable, Column, Table } from './table.ts';

type Said = Words['marks'];

/** A table that says what its rows and columns are, in the language of the words. */
export function described(table: BareTable, { marks }: Words): Table {
  const columns = table.columns.map(
    (column): Column => ({ ...column, description: columnText(table, column, marks) }),
  );
  return { ...table, about: marks.tables[table.name], columns };
}

/** What a column holds: in this table, in any table, or by what its ids or its unit belong to. */
function columnText(table: BareTable, column: BareColumn, { columns }: Said): string {
  const { name, ref, unit, description } = column;
  const ofTable: Texts | undefined = (columns.ofTable as Readonly<Record<string, Texts>>)[
    table.name
  ];
  const ofAny: Texts = columns.holds;
  if (ofTable?.[name] !== undefined) return ofTable[name];
  if (name === 'counted') return columns.counted(unit ?? '');
  if (ref !== undefined && isOwner(table, name)) return columns.idIn(ref);
  return ofAny[name] ?? endingText(name, columns) ?? refText(ref, columns) ?? description ?? name;
}

type Texts = Readonly<Record<string, string>>;

/** Whether a column of a list's table says whose list it is. */
function isOwner({ primaryKey }: BareTable, name: string): boolean {
  return primaryKey.length > 1 && primaryKey[0] === name;
}

function refText(ref: string | undefined, { idOfOne }: Said['columns']): string | undefined {
  return ref === undefined ? undefined : idOfOne(ref);
}

/** The second column of a value of two parts. */
function endingText(name: string, { unitOf, currencyOf }: Said['columns']): string | undefined {
  const [, of, end] = /^(.+)_(unit|currency)$/.exec(name) ?? [];
  if (of === undefined) return undefined;
  return end === 'unit' ? unitOf(of) : currencyOf(of);
}
