import { join } from 'node:path';
import type { Problem } from '../read/problem.ts';
import { type Written, writeRows } from '../write/write-rows.ts';
import { type Imported, writeImported } from './imported-list.ts';
import type { Outcome } from './outcome.ts';

type Added = Extract<Outcome, { is: 'added' }>;

/** Where and when rows are added. */
export interface AddOptions {
  readonly contentDir: string;
  readonly project: string;
  readonly imported: Imported;
  readonly now: Date;
  readonly by: string;
}

/**
 * Writes rows, and the list by which their lines are known. The list names them as pending before they are written and as written
 * after: whenever this breaks off, the next import can see by the ledger which of the two holds.
 */
export async function addRows(
  added: readonly Added[],
  { contentDir, project, imported, now, by }: AddOptions,
): Promise<{ written: readonly Written[] } | { problems: readonly Problem[] }> {
  const folder = join(contentDir, project);
  const rows = added.map(({ row }) => row);
  const tried = await writeRows(contentDir, project, rows, { now, by, dry: true });
  if ('problems' in tried) return tried;
  const named = rows.map(({ kind, fields }, index) => ({
    kind,
    fields: { id: tried.written[index]?.id ?? '', ...fields },
  }));
  const listed = (pending: boolean): Imported =>
    new Map([
      ...imported,
      ...added.map(
        ({ key }, index) => [key, { id: named[index]?.fields.id ?? '', pending }] as const,
      ),
    ]);
  await writeImported(folder, listed(true));
  const result = await writeRows(contentDir, project, named, { now, by });
  await writeImported(folder, 'problems' in result ? imported : listed(false));
  return result;
}
