import { type ListKind, listKinds, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
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

function duplicatesIn(project: ReadProject, kinds: readonly ListKind[]): Problem[] {
  const first = new Map<string, string>();
  const taken = new Set(kinds.flatMap((kind) => project.lists[kind].map(({ value }) => value.id)));
  const problems: Problem[] = [];
  for (const { value, raw } of kinds.flatMap((kind) => [...project.lists[kind]])) {
    const place = raw.placeOf(['id']);
    const where = `${place.file}:${place.line}`;
    const before = first.get(value.id);
    if (before === undefined) first.set(value.id, where);
    else
      problems.push(
        problemAt(
          place,
          'id/duplicate',
          `the id "${value.id}" stands already at ${before}`,
          `write a free one, like "${freeId(value.id, taken)}"`,
        ),
      );
  }
  return problems;
}

/** A free id beside a taken one: `c-014` → the next free `c-…`; a word gets a number after it. */
export function freeId(id: string, taken: Set<string>): string {
  const match = /^(.*?)(\d+)$/.exec(id);
  const stem = match?.[1] ?? `${id}-`;
  const width = match?.[2]?.length ?? 1;
  for (let number = Number(match?.[2] ?? 1) + 1; ; number++) {
    const candidate = stem + String(number).padStart(width, '0');
    if (taken.has(candidate)) continue;
    taken.add(candidate);
    return candidate;
  }
}
