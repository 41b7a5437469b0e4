import { join } from 'node:path';
import { rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { readImported, settle } from './imported-list.ts';
import type { Before } from './line-outcomes.ts';

/** What was imported into a project before, by its list and its ledger. */
export async function importedBefore(contentDir: string, project: ReadProject): Promise<Before> {
  const rowIds = new Set([
    ...rowKinds.flatMap((kind) => project.lists[kind].map(({ value }) => value.id)),
    ...[...project.lost.ids.values()].flat(),
  ]);
  const imported = settle(await readImported(join(contentDir, project.id)), rowIds);
  return { imported, rowIds };
}
