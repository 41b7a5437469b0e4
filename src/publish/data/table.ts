import type { Words } from '../../words/words.ts';

/** What stands in a cell. Decimals are text, so that `12.50` keeps its digits. */
export type Cell = string | number | boolean | undefined;

/** Types of Table Schema (Data Package 2.0) that the tables use. */
export type CellType = 'string' | 'integer' | 'number' | 'boolean' | 'date';

/** A column and what may stand in it. */
export interface Column {
  readonly name: string;
  readonly type: CellType;
  readonly description: string;
  readonly format?: 'uri';
  /** UCUM code of what its numbers count. */
  readonly unit?: string;
  readonly required?: boolean;
  readonly minimum?: number;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  /** The table whose ids stand in it. */
  readonly ref?: string;
}

/** A column before it is put into words; its own description, if any, is that of the schema of its field. */
export type BareColumn = Omit<Column, 'description'> & Partial<Pick<Column, 'description'>>;

/** A column, and how its cell is found in a record. */
export interface ColumnOf<Record> extends BareColumn {
  readonly cell: (record: Record) => Cell;
}

/** A table of the ledger as it leaves the house: nothing private is in it. */
export interface Table {
  /** Also the name of its file, without `.csv`. */
  readonly name: TableName;
  /** What a row of it is, in one sentence. */
  readonly about: string;
  readonly columns: readonly Column[];
  readonly primaryKey: readonly string[];
  /** Cells in the order of the columns. */
  readonly rows: readonly (readonly Cell[])[];
}

/** Names of the tables. */
export type TableName = keyof Words['marks']['tables'];

/** A table before it is put into words. */
export type BareTable = Omit<Table, 'about' | 'columns'> & {
  readonly columns: readonly BareColumn[];
};

/** Puts records into the columns of a table; its key is `id` unless said otherwise. */
export function tableOf<Record>(
  name: TableName,
  {
    columns,
    records,
    primaryKey = ['id'],
  }: {
    readonly columns: readonly ColumnOf<Record>[];
    readonly records: readonly Record[];
    readonly primaryKey?: readonly string[];
  },
): BareTable {
  return {
    name,
    columns: columns.map(({ cell, ...column }) => column),
    primaryKey,
    rows: records.map((record) => columns.map(({ cell }) => cell(record))),
  };
}
