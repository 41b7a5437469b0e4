import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type ListKind, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { ProjectFiles } from '../read/files.ts';
import type { Fields } from './csv-append.ts';
import { fitsTable, requiredFields } from './kind-fields.ts';
import { lineEndOf } from './line-end.ts';

/** The file that a row belongs to, by what the builder has been doing: one file a kind, or one a year. */
export function fileFor(
  project: ReadProject,
  { id, records }: ProjectFiles,
  kind: ListKind,
  fields: Fields,
): string {
  const files = records.filter((record) => record.kind === kind).map(({ file }) => file);
  const year = /^\d{4}/.exec(fields.date ?? '')?.[0];
  const newest = (among: readonly string[]) => newestOf(project, kind, among);
  const ofYear = files.filter((file) => year !== undefined && yearOf(file) === year);
  if (ofYear.length > 0) return newest(ofYear);
  const undated = files.filter((file) => yearOf(file) === undefined);
  const yearly = files.filter((file) => /-\d{4}\.(yaml|csv)$/.test(file));
  if (year !== undefined && yearly.length > 0 && undated.length === 0)
    return newest(yearly).replace(/-\d{4}(?=\.\w+$)/, `-${year}`);
  if (files.length > 0) return newest(undated.length > 0 && year !== undefined ? undated : files);
  const folder = (rowKinds as readonly ListKind[]).includes(kind) ? 'ledger/' : '';
  return `${id}/${folder}${kind}.${fitsTable(kind) ? 'csv' : 'yaml'}`;
}

function yearOf(file: string): string | undefined {
  return /-(\d{4})(?=[-.])[^/]*$/.exec(file)?.[1];
}

/** The one of several files that has the newest row; of equals the last by name. */
function newestOf(project: ReadProject, kind: ListKind, files: readonly string[]): string {
  const newest = new Map(files.map((file) => [file, '']));
  for (const { value, raw } of project.lists[kind]) {
    const { file } = raw.placeOf(['id']);
    const { date = '' } = value as { readonly date?: string };
    if (date > (newest.get(file) ?? '9')) newest.set(file, date);
  }
  return [...newest].reduce((best, next) => (next[1] >= best[1] ? next : best))[0];
}

/** What a new file begins with: the header or the editor's line of the others of its kind, or of its own. */
export async function beginningOf(
  contentDir: string,
  file: string,
  kind: ListKind,
  others: readonly string[],
): Promise<string> {
  const ending = file.endsWith('.csv') ? '.csv' : '.yaml';
  const like = others.filter((other) => other.endsWith(ending)).at(-1);
  if (like !== undefined) {
    const text = await readFile(join(contentDir, like), 'utf8');
    const line = text.split(/\r?\n/, 1)[0] ?? '';
    if (ending === '.csv' || line.includes('yaml-language-server')) return line + lineEndOf(text);
    return '';
  }
  if (ending === '.csv') return `${requiredFields(kind).join(',')}\n`;
  const up = '../'.repeat(file.split('/').length - 1);
  return existsSync(join(contentDir, '.schema', `${kind}.json`))
    ? `# yaml-language-server: $schema=${up}.schema/${kind}.json\n`
    : '';
}
