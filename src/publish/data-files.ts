import type { Project } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { bookJson } from './book-json.ts';
import { bookSchema } from './book-schema.ts';
import { csvOf } from './csv.ts';
import { ledgerTables } from './data/ledger-tables.ts';
import { dataPackage, type TableFile } from './data-package.ts';

/** Everything of a project that can be downloaded. */
export interface DataFiles {
  readonly tables: readonly TableFile[];
  /** `datapackage.json`, which describes the tables. */
  readonly descriptor: string;
  readonly book: string;
  readonly bookSchema: string;
}

/** Makes the downloads of a project. */
export function dataFiles(
  project: Project,
  { site, to }: { site: Site; to: Addresses },
): DataFiles {
  const words = wordsOf(site.language);
  const made = ledgerTables(project, words);
  const tables = made.map((table) => ({ table, path: `${table.name}.csv`, text: csvOf(table) }));
  const addressOf = (name: string) => to.absolute(to.dataFile(project, name));
  const info = {
    name: project.id,
    title: words.marks.data.ledgerOf(project.info.name),
    description: project.info.summary,
    address: addressOf('datapackage.json'),
    homepage: to.absolute(to.data(project)),
    version: project.lastDay,
    contributor: project.info.builder ?? site.builder,
  };
  const schema = addressOf('book.schema.json');
  return {
    tables,
    descriptor: printed(dataPackage(info, tables)),
    book: printed(bookJson(project, made, schema)),
    bookSchema: printed(bookSchema(made, schema)),
  };
}

function printed(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** A file as the page lists it. */
export interface ListedFile {
  readonly name: string;
  readonly about: string;
  /** Empty for a file that is no table. */
  readonly rows: string;
  readonly bytes: string;
}

/** All files with their sizes, as a reader of the language sees them. */
export function fileList(
  files: DataFiles,
  language: string,
  { marks: { data } }: Words,
): readonly ListedFile[] {
  const show = (count: number) => new Intl.NumberFormat(language).format(count);
  const sizeOf = (text: string) => show(Buffer.byteLength(text));
  const whole = [
    ['datapackage.json', data.descriptor, files.descriptor],
    ['book.json', data.book, files.book],
    ['book.schema.json', data.schema, files.bookSchema],
  ] as const;
  return [
    ...whole.map(([name, about, text]) => ({ name, about, rows: '', bytes: sizeOf(text) })),
    ...files.tables.map(({ path, table, text }) => ({
      ...{ name: path, about: table.about },
      ...{ rows: show(table.rows.length), bytes: sizeOf(text) },
    })),
  ];
}

/** What to type to have the money of each phase out of the tables. */
export function sqliteLines(name: string): readonly string[] {
  return [
    `sqlite3 ${name}.db`,
    '.import --csv costs.csv costs',
    '.import --csv cost_phases.csv cost_phases',
    'SELECT cost_phases.phase, sum(cost_phases.counted) FROM cost_phases JOIN costs ON costs.id = cost',
    "WHERE in_totals = 'true' GROUP BY cost_phases.phase;",
  ];
}
