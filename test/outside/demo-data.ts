import { openBook } from '../../src/book/open.ts';
import type { Project } from '../../src/book/types.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { type DataFiles, dataFiles } from '../../src/publish/data-files.ts';
import { contentDir } from './raw-ledger.ts';

/** A project of the demo and what can be downloaded of it. */
export interface DemoData {
  readonly id: string;
  readonly project: Project;
  readonly made: DataFiles;
  /** Text of every file by its name. */
  readonly files: Readonly<Record<string, string>>;
}

/** The downloads of every project in a content folder, the demo's unless said otherwise. */
export async function demoData(folder = contentDir): Promise<readonly DemoData[]> {
  const { projects, site } = await openBook(folder, { now: new Date('2027-01-01T12:00:00Z') });
  if (site === undefined) throw new Error('the demo has no site.yaml');
  return projects.map((project) => {
    const made = dataFiles(project, { site, to: addressesOf(site.address) });
    return { id: project.id, project, made, files: textsOf(made) };
  });
}

function textsOf({ tables, descriptor, book, bookSchema }: DataFiles): Record<string, string> {
  const whole = {
    'datapackage.json': descriptor,
    'book.json': book,
    'book.schema.json': bookSchema,
  };
  return { ...whole, ...Object.fromEntries(tables.map(({ path, text }) => [path, text])) };
}
