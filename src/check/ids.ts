import { type ListKind, listKinds, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';

/** An id names one thing: rows of the ledger share one set of ids, every other kind has its own. */
export const idsAreUnique: Rule = ({ project }) => {
  const definitionKinds = (Object.keys(listKinds) as ListKind[]).filter(
    (kind) => !(rowKinds as readonly string[]).includes(kind),
  );
  return [
    duplicatesIn(project, rowKinds),
    ...definitionKinds.map((kind) => duplicatesIn(project, [kind])),
  ].flat();
};

/** Each free id is looked for behind those that were given before it; a table of one id throughout has other troubles. */
const MOST_FREE_IDS = 500;

function duplicatesIn(project: ReadProject, kinds: readonly ListKind[]): Problem[] {
  const first = new Map<string, RawRecord>();
  const again: { readonly id: string; readonly raw: RawRecord }[] = [];
  for (const { value, raw } of kinds.flatMap((kind) => [...project.lists[kind]])) {
    if (first.has(value.id)) again.push({ id: value.id, raw });
    else first.set(value.id, raw);
  }
  const taken = new Set(first.keys());
  return again.map(({ id, raw }, index) => {
    const before = first.get(id)?.placeOf(['id']);
    const message = `the id "${id}" stands already at ${before?.file}:${before?.line}`;
    const fix =
      index < MOST_FREE_IDS
        ? `write a free one, like "${freeId(id, taken)}"`
        : 'give every row an id of its own';
    return problemAt(raw.placeOf(['id']), 'id/duplicate', message, fix);
  });
}

/** A free id beside a taken one: `c-014` → the next free `c-…`; a word gets a number after it. Only as many digits count as can be counted exactly. */
export function freeId(id: string, taken: Set<string>): string {
  const match = /^(.*?)(\d{1,9})$/.exec(id);
  const stem = match?.[1] ?? `${id}-`;
  const width = match?.[2]?.length ?? 1;
  for (let number = Number(match?.[2] ?? 1) + 1; ; number++) {
    const candidate = stem + String(number).padStart(width, '0');
    if (taken.has(candidate)) continue;
    taken.add(candidate);
    return candidate;
  }
}
