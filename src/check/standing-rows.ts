import { correctionsOf } from '../ledger/corrections.ts';
import type { ListKind, RecordOf } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { Understood } from '../read/understand.ts';

const replaced = new WeakMap<ReadProject, ReadonlySet<string>>();

/** Rows of a kind that no later row has replaced: what a struck row says is no longer held against anybody. */
export function standingRows<Kind extends ListKind>(
  project: ReadProject,
  kind: Kind,
): readonly Understood<RecordOf<Kind>>[] {
  const gone = replaced.get(project) ?? new Set(correctionsOf(project.lists).map(({ old }) => old));
  replaced.set(project, gone);
  const rows: readonly Understood<RecordOf<Kind>>[] = project.lists[kind];
  return gone.size === 0 ? rows : rows.filter(({ value }) => !gone.has(value.id));
}
