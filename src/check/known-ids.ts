import { type ListKind, listKinds, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';

/** Ids that a reference may name, by what the reference calls their kind; a kind that could not be read whole is not in it. */
export type KnownIds = ReadonlyMap<string, ReadonlySet<string>>;

/**
 * Every id of a project. Records with mistakes of their own count too, and a kind of which a file is broken is left out,
 * so that one slip does not come back as a hundred "unknown" ones.
 */
export function knownIds(project: ReadProject): KnownIds {
  const known = new Map<string, ReadonlySet<string>>();
  const add = (kind: string, ids: Iterable<string>) => known.set(kind, new Set(ids));
  for (const kind of Object.keys(listKinds) as ListKind[]) {
    const ids = project.lists[kind].map(({ value }) => value.id);
    add(kind, ids.concat(project.lost.ids.get(kind) ?? []));
  }
  add(
    'rows',
    rowKinds.flatMap((kind) => [...(known.get(kind) ?? [])]),
  );
  add('work', project.info?.value.work ?? []);
  add('people', project.info?.value.people.map(({ id }) => id) ?? []);
  add(
    'entries',
    project.entries.map(({ slug }) => slug),
  );
  add(
    'systems',
    project.lists.parts.map(({ value }) => value.system),
  );

  const sources = project.lists.sources.map(({ value }) => value);
  add(
    'donors',
    sources.filter(({ kind }) => kind === 'donor').map(({ id }) => id),
  );

  for (const kind of project.lost.kinds) known.delete(kind);
  if (rowKinds.some((kind) => project.lost.kinds.has(kind))) known.delete('rows');
  if (project.lost.kinds.has('parts') || (project.lost.ids.get('parts')?.length ?? 0) > 0)
    known.delete('systems');
  if (project.lost.kinds.has('sources') || (project.lost.ids.get('sources')?.length ?? 0) > 0)
    known.delete('donors');
  return known;
}
