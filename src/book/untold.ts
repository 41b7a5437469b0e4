import { ledgerRows } from '../mark/ledger-rows.ts';
import type { ReadEntry, ReadProject } from '../read/content.ts';
import type { Day } from '../time/day.ts';

/** A row that no entry has told yet. */
export interface UntoldRow {
  readonly id: string;
  readonly kind: string;
  readonly day: Day;
  readonly file: string;
  readonly line: number;
}

/** What happened in a stretch of days and stands in no entry. */
export interface Untold {
  readonly rows: readonly UntoldRow[];
  /** Files in `photos/`, those without a day among them. */
  readonly photos: readonly string[];
}

/** Days after the one, up to the other; from the beginning, or up to now, where one is not given. */
export interface Stretch {
  readonly after: Day | undefined;
  readonly until: Day | undefined;
}

/** Rows and photos of a stretch of days that no entry tells, links to or shows. */
export function untoldIn(project: ReadProject, { after, until }: Stretch): Untold {
  const told = toldIn(project.entries);
  const within = (day: Day) =>
    (after === undefined || day > after) && (until === undefined || day <= until);
  const rows = ledgerRows(project).flatMap(({ id, kind, day, file, raw }): UntoldRow[] => {
    if (day === undefined || !within(day) || told.has(id)) return [];
    return [{ id, kind, day, file, line: raw.placeOf(['id']).line }];
  });
  const { readings, findings } = project.lists;
  const used = new Set([...readings, ...findings].map(({ value }) => value.photo));
  const taken = new Map(project.lists.photos.map(({ value }) => [value.file, value.taken]));
  const photos = project.photos.filter((name) => {
    const day = taken.get(name);
    return !told.has(name) && !used.has(name) && (day === undefined || within(day));
  });
  return { rows: rows.sort((a, b) => (a.day < b.day ? -1 : Number(a.day > b.day))), photos };
}

/** Ids that entries tell or link to, and texts of their components' properties, among which are the names of photos. */
function toldIn(entries: readonly ReadEntry[]): ReadonlySet<string> {
  return new Set(
    entries.flatMap(({ value, body }) => [
      ...(value.tells ?? []),
      ...body.links.map(({ url }) => url.replace(/^[a-z]+:/, '')),
      ...body.components.flatMap(({ props }) =>
        props.flatMap(({ literal }) => (Array.isArray(literal) ? literal : [String(literal)])),
      ),
    ]),
  );
}
