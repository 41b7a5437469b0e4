import { join } from 'node:path';
import { rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { readImported, settle, writeImported } from './imported-list.ts';
import type { Before } from './line-outcomes.ts';

/** What was imported into a project before, by its list and its ledger. Where an import broke off, whoever may write says in the list how it ended. */
export async function importedBefore(
  contentDir: string,
  project: ReadProject,
  { write }: { readonly write: boolean },
): Promise<Before> {
  const folder = join(contentDir, project.id);
  const rowIds = new Set([
    ...rowKinds.flatMap((kind) => project.lists[kind].map(({ value }) => value.id)),
    ...[...project.lost.ids.values()].flat(),
  ]);
  const listed = await readImported(folder);
  const imported = settle(listed, rowIds);
  const brokeOff = [...listed.values()].some(({ pending }) => pending);
  if (write && brokeOff) await writeImported(folder, imported);
  return { imported, rowIds };
}
