import { type ListKind, listKinds, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';

/** Ids that a reference may name, by what the reference calls their kind; a kind that could not be read whole is not in it. */
export type KnownIds = ReadonlyMap<string, readonly string[]>;

/**
 * Every id of a project. Records with mistakes of their own count too, and a kind of which a file is broken is left out,
 * so that one slip does not come back as a hundred "unknown" ones.
 */
export function knownIds(project: ReadProject): KnownIds {
  const known = new Map<string, readonly string[]>();
  for (const kind of Object.keys(listKinds) as ListKind[]) {
    known.set(kind, [
      ...project.lists[kind].map(({ value }) => value.id),
      ...(project.lost.ids.get(kind) ?? []),
    ]);
  }
  known.set(
    'rows',
    rowKinds.flatMap((kind) => known.get(kind) ?? []),
  );
  known.set('work', project.info?.value.work ?? []);
  known.set('people', project.info?.value.people.map(({ id }) => id) ?? []);
  known.set(
    'entries',
    project.entries.map(({ slug }) => slug),
  );
  known.set('systems', [...new Set(project.lists.parts.map(({ value }) => value.system))]);

  known.set('parts-or-groups', [...(known.get('groups') ?? []), ...(known.get('parts') ?? [])]);

  for (const kind of project.lost.kinds) known.delete(kind);
  if (rowKinds.some((kind) => project.lost.kinds.has(kind))) known.delete('rows');
  if (project.lost.kinds.has('parts') || project.lost.kinds.has('groups'))
    known.delete('parts-or-groups');
  if (project.lost.kinds.has('parts') || (project.lost.ids.get('parts')?.length ?? 0) > 0)
    known.delete('systems');
  return known;
}
