import type { Entry, Project } from './types.ts';

/** Entries that link to a part, point at it in their video, or tell of one of its rows; in order. */
export function entriesOfPart(project: Project, part: string): readonly Entry[] {
  const index = indexes.get(project) ?? indexOf(project);
  indexes.set(project, index);
  return index.get(part) ?? [];
}

/** Of each project once: a page of every part asks. */
const indexes = new WeakMap<Project, ReadonlyMap<string, readonly Entry[]>>();

function indexOf(project: Project): ReadonlyMap<string, readonly Entry[]> {
  const partOf = new Map(project.partRows.map(({ rowId, id }) => [rowId, id]));
  const partsOf = partsOfRows(project);
  const index = new Map<string, Entry[]>();
  for (const entry of project.entries)
    for (const part of new Set([
      ...entry.links.flatMap((link) => partOf.get(/^part:(.*)$/s.exec(link)?.[1] ?? '') ?? []),
      ...(entry.tells ?? []).flatMap((id) => partsOf.get(id) ?? []),
      ...(entry.moments ?? []).flatMap((moment) => partOf.get(moment.part ?? '') ?? []),
    ]))
      index.set(part, [...(index.get(part) ?? []), entry]);
  return index;
}

/** The parts that a row is about, by its id: a row of the part itself, a search for it, a cost or a preparation of it. */
function partsOfRows({
  partRows,
  searches,
  costs,
  preparations,
}: Project): ReadonlyMap<string, readonly string[]> {
  return new Map<string, readonly string[]>([
    ...partRows.map(({ rowId, id }) => [rowId, [id]] as const),
    ...searches.map(({ id, part }) => [id, [part]] as const),
    ...costs.map(({ id, parts }) => [id, parts.map((share) => share.id)] as const),
    ...preparations.map(({ rowId, parts }) => [rowId, parts] as const),
  ]);
}
