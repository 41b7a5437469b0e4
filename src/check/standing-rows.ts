import { correctionsOf } from '../ledger/corrections.ts';
import type { ListKind, RecordOf } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { Understood } from '../read/understand.ts';

const replaced = new WeakMap<ReadProject, ReadonlySet<string>>();

/** Ids of all rows that a later row replaced or withdrew. */
export function replacedIds(project: ReadProject): ReadonlySet<string> {
  const gone = replaced.get(project) ?? new Set(correctionsOf(project.lists).map(({ old }) => old));
  replaced.set(project, gone);
  return gone;
}

/** Rows of a kind that no later row has replaced: what a struck row says is no longer held against anybody. */
export function standingRows<Kind extends ListKind>(
  project: ReadProject,
  kind: Kind,
): readonly Understood<RecordOf<Kind>>[] {
  const gone = replacedIds(project);
  const rows: readonly Understood<RecordOf<Kind>>[] = project.lists[kind];
  return gone.size === 0 ? rows : rows.filter(({ value }) => !gone.has(value.id));
}
