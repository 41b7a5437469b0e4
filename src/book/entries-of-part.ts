import type { Entry, Project } from './types.ts';

/** Entries that link to a part, point at it in their video, or tell of one of its rows; in order. */
export function entriesOfPart(project: Project, part: string): readonly Entry[] {
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);
  const own = project.partRows.filter(({ id }) => id === part).map(({ rowId }) => rowId);
  const about = new Set([
    ...own,
    ...ids(project.searches.filter((row) => row.part === part)),
    ...ids(project.costs.filter(({ parts }) => parts.some(({ id }) => id === part))),
    ...project.preparations.filter(({ parts }) => parts.includes(part)).map(({ rowId }) => rowId),
  ]);
  const links = new Set(own.map((id) => `part:${id}`));
  return project.entries.filter(
    (entry) =>
      entry.links.some((link) => links.has(link)) ||
      (entry.tells ?? []).some((id) => about.has(id)) ||
      (entry.moments ?? []).some(
        (moment) => moment.part !== undefined && own.includes(moment.part),
      ),
  );
}
