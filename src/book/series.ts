import type { Entry, Project } from './types.ts';

/** The entries of one phase, and which of them an entry is. */
export interface Series {
  readonly entries: readonly Entry[];
  /** Counted from 1. */
  readonly number: number;
  readonly before: Entry | undefined;
  readonly after: Entry | undefined;
}

/** Where an entry stands among those of its phase. */
export function seriesOf(project: Project, entry: Entry): Series {
  const entries = project.entries.filter(({ phase }) => phase === entry.phase);
  const index = entries.indexOf(entry);
  return { entries, number: index + 1, before: entries[index - 1], after: entries[index + 1] };
}
