/** The page of downloads, and what the descriptors of the files say. */
export const data = {
  title: 'Data',
  description: (project: string) =>
    `The whole ledger of ${project} as CSV and JSON, to check or to reckon with.`,
  document: 'Ledger data',
  ledgerOf: (project: string) => `Ledger of ${project}`,
  lead: (tables: number) =>
    `Every public row of the ledger, ${tables} tables, up to the newest row. What is private stays at home; what a row withholds is empty here, and listed in {withheld}; amounts that are withheld are one row for each category.`,
  files: 'Files',
  file: 'File',
  rows: 'Rows',
  bytes: 'Bytes',
  holds: 'What it holds',
  descriptor: 'Describes the tables: columns, keys, units, sizes, SHA-256.',
  book: 'The whole book in one file: all tables, all totals with their rows, all values of specs.',
  schema: 'JSON Schema of the whole book.',
  load: 'Into a database',
  loadHow: (currency: string) =>
    `With the files in one folder, {sqlite} loads them as they are. These lines give the money of each phase, in minor units of ${currency}, as it stands on the {costs}:`,
  costSheet: 'cost sheet',
  commands: 'Commands',
  columns: 'Columns',
  columnCount: (count: number) => `${count} columns`,
  key: (columns: string) => `Key: ${columns}. {file}`,
  columnsOf: (table: string) => `Columns of ${table}`,
  column: 'Column',
  type: 'Type',
  mayBeEmpty: (type: string) => `${type}, may be empty`,
};
