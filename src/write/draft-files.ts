import { join } from 'node:path';
import type { ListKind } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { listContent, type ProjectFiles } from '../read/files.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { decodeText } from '../read/text.ts';
import { appendCsvRows, type Fields } from './csv-append.ts';
import { type Insertion, insert } from './insertion.ts';
import { bytesOf } from './journal.ts';
import { fieldNames } from './kind-fields.ts';
import { idGiver } from './next-id.ts';
import { beginningOf, fileFor } from './row-file.ts';
import { appendYamlRows } from './yaml-append.ts';

/** A file with rows added, before it is written. */
export interface Draft {
  readonly kind: ListKind;
  readonly file: string;
  /** Nothing where the file is new. */
  readonly before: Uint8Array | undefined;
  readonly after: Uint8Array;
  readonly insertions: readonly Insertion[];
  readonly rows: readonly Fields[];
  readonly texts: readonly string[];
  /** Where each row stood among all that were asked for. */
  readonly indices: readonly number[];
}

interface Asked {
  readonly kind: ListKind;
  readonly fields: Fields;
  readonly file?: string;
}

/** Sorts rows by the file that they belong to, gives them ids, and puts them in. */
export async function draftFiles(
  contentDir: string,
  project: ReadProject,
  rows: readonly Asked[],
): Promise<Draft[] | { readonly problem: Problem }> {
  const listed = await listContent(contentDir, { projects: [project.id] });
  const [files] = listed.projects;
  if (files === undefined) throw new Error('this is our bug: a project was read and is not listed');
  const asked = rows.map((row) => ({ ...row, fields: cleaned(row.fields) }));
  const giveId = idGiver(project, asked);
  const groups = new Map<string, { kind: ListKind; rows: Fields[]; indices: number[] }>();
  for (const [index, { kind, fields, file: named }] of asked.entries()) {
    const file = named ?? fileFor(project, files, kind, fields);
    const wrong = wrongFile(file, kind, files);
    if (wrong) return { problem: wrong };
    const group = groups.get(file) ?? { kind, rows: [], indices: [] };
    group.rows.push(fields.id ? fields : { id: giveId(kind, fields), ...fields });
    group.indices.push(index);
    groups.set(file, group);
  }

  const drafts: Draft[] = [];
  for (const [file, group] of groups) {
    const drafted = await draftFile(contentDir, files, file, group);
    if ('problem' in drafted) return drafted;
    drafts.push(drafted);
  }
  return drafts;
}

async function draftFile(
  contentDir: string,
  { records }: ProjectFiles,
  file: string,
  { kind, rows, indices }: { kind: ListKind; rows: Fields[]; indices: number[] },
): Promise<Draft | { readonly problem: Problem }> {
  const before = await bytesOf(join(contentDir, file));
  const others = records.filter((record) => record.kind === kind).map((record) => record.file);
  if (before !== undefined) {
    const decoded = decodeText(before, file);
    if (typeof decoded !== 'string') return { problem: decoded };
  }
  // As it stands, with its byte order mark and in the builder's own form of Unicode.
  const text =
    before === undefined
      ? await beginningOf(contentDir, file, kind, others)
      : new TextDecoder('utf-8', { ignoreBOM: true }).decode(before);
  const { insertions, rows: texts } = file.endsWith('.csv')
    ? appendCsvRows(text, rows)
    : appendYamlRows(text, rows, fieldNames(kind));
  const after = new TextEncoder().encode(insert(text, insertions));
  return { kind, file, before, after, insertions, rows, texts, indices };
}

/** Fields as they are written: without spaces around, in one form of Unicode, and none that is empty. */
function cleaned(fields: Fields): Fields {
  return Object.fromEntries(
    Object.entries(fields)
      .map(([name, text]) => [name, text.trim().normalize('NFC')] as const)
      .filter(([, text]) => text !== ''),
  );
}

/** A file that is named must be one that the project's rows of that kind are read from. */
function wrongFile(file: string, kind: ListKind, { id }: ProjectFiles): Problem | undefined {
  const name = /^([a-z0-9-]+)\/(?:ledger\/)?([a-z]+)(?:-[\w-]+)?\.(?:yaml|csv)$/.exec(file);
  if (name?.[1] === id && name[2] === kind) return undefined;
  const place = { file, line: 1, column: 1 };
  const fix = `name it like "${id}/ledger/${kind}.csv"`;
  return problemAt(place, 'write/file', `rows of ${kind} are not read from "${file}"`, fix);
}
