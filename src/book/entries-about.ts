import type { Entry, Project } from './types.ts';

/** Entries that show a spec in a component, name one of its readings, or point at it in their video; in order. */
export function entriesAbout(project: Project, spec: string): readonly Entry[] {
  const index = indexes.get(project) ?? indexOf(project);
  indexes.set(project, index);
  return index.get(spec) ?? [];
}

/** Of each project once: a page of every spec asks. */
const indexes = new WeakMap<Project, ReadonlyMap<string, readonly Entry[]>>();

function indexOf({ readings, entries }: Project): ReadonlyMap<string, readonly Entry[]> {
  const specOf = new Map(readings.map(({ reading }) => [reading.id, reading.spec]));
  const index = new Map<string, Entry[]>();
  for (const entry of entries)
    for (const spec of new Set([...specsToldIn(entry, specOf), ...specsShownIn(entry)]))
      index.set(spec, [...(index.get(spec) ?? []), entry]);
  return index;
}

function specsToldIn(
  { tells = [], moments = [] }: Entry,
  specOf: ReadonlyMap<string, string>,
): readonly string[] {
  return [
    ...tells.flatMap((id) => specOf.get(id) ?? []),
    ...moments.flatMap(({ spec }) => spec ?? []),
  ];
}

function specsShownIn({ components }: Entry): readonly string[] {
  return components
    .filter(({ name }) => ['Spec', 'Working', 'Change'].includes(name))
    .flatMap(({ props }) => props.filter(({ name }) => name === 'of'))
    .flatMap(({ literal }) => [literal].flat())
    .filter((id) => typeof id === 'string');
}
