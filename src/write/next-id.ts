import { freeId } from '../check/ids.ts';
import { type ListKind, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { Fields } from './csv-append.ts';

/** Hands out ids to rows that have none, in the habit of their kind, each once. */
export function idGiver(
  project: ReadProject,
  rows: readonly { readonly kind: ListKind; readonly fields: Fields }[],
): (kind: ListKind, fields: Fields) => string {
  const given = new Map<string, Set<string>>();
  const takenFor = (kind: ListKind) => {
    const group = groupOf(kind);
    const name = group.length > 1 ? 'rows' : kind;
    const taken = given.get(name) ?? new Set(group.flatMap((one) => idsOf(project, one)));
    for (const row of rows) if (row.fields.id && group.includes(row.kind)) taken.add(row.fields.id);
    given.set(name, taken);
    return taken;
  };
  return (kind, fields) => freshId(project, kind, fields, takenFor(kind));
}

/** Kinds that share one set of ids. */
function groupOf(kind: ListKind): readonly ListKind[] {
  return (rowKinds as readonly ListKind[]).includes(kind) ? rowKinds : [kind];
}

/** Every id of a kind, those of records with mistakes too. */
function idsOf(project: ReadProject, kind: ListKind): string[] {
  return [
    ...project.lists[kind].map(({ value }) => value.id),
    ...(project.lost.ids.get(kind) ?? []),
  ];
}

function freshId(project: ReadProject, kind: ListKind, fields: Fields, taken: Set<string>): string {
  const habit = numbered(idsOf(project, kind));
  if (habit !== undefined) return freeId(habit, taken);
  const name = fields.name ?? fields.title;
  if (name !== undefined) return firstFree(wordsOf(name) || kind, taken);
  return freeId(`${freeStem(kind, taken)}-000`, taken);
}

function firstFree(id: string, taken: Set<string>): string {
  if (taken.has(id)) return freeId(id, taken);
  taken.add(id);
  return id;
}

/** The highest id of the stem that most ids have, where they are short stems with a number: `h-104`. */
function numbered(ids: readonly string[]): string | undefined {
  const byStem = new Map<string, string[]>();
  for (const id of ids) {
    const stem = /^([a-z]{1,3}-?)\d+$/.exec(id)?.[1];
    if (stem !== undefined) byStem.set(stem, [...(byStem.get(stem) ?? []), id]);
  }
  const most = [...byStem.values()].sort((a, b) => b.length - a.length)[0] ?? [];
  if (most.length * 2 < ids.length) return undefined;
  const number = (id: string) => Number(/(?<!\d)\d+$/.exec(id)?.[0] ?? 0);
  return most.reduce<string | undefined>(
    (best, id) => (best === undefined || number(id) > number(best) ? id : best),
    undefined,
  );
}

/** Letters of the kind's name that no id starts with yet, one if that is enough. */
function freeStem(kind: string, taken: ReadonlySet<string>): string {
  const stems = new Set([...taken].map((id) => id.split('-')[0]));
  for (let length = 1; length < kind.length; length++) {
    const stem = kind.slice(0, length);
    if (!stems.has(stem)) return stem;
  }
  return kind;
}

/** A name as an id. */
export function wordsOf(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
