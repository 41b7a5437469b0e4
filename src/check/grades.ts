import type { Grade } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';

/** Grades stand best first: no limit tightens from one to the next, and none is more than the whole. */
export const gradesAreInOrder: Rule = ({ project }) =>
  project.lists.grades.flatMap(({ raw, value }, index) => {
    const better = project.lists.grades[index - 1]?.value;
    return [...tooMuch(raw, value), ...(better ? tighter(raw, value, better) : [])];
  });

const LIMITS = [
  ['remaining-at-least', 'remainingAtLeast', -1],
  ['filler-at-most', 'fillerAtMost', 1],
  ['holes-at-most', 'holesAtMost', 1],
] as const;

function tooMuch(raw: RawRecord, grade: Grade): Problem[] {
  return LIMITS.flatMap(([field, key]) =>
    Number(grade[key] ?? 0) > 100
      ? [
          problemAt(
            raw.placeOf([field]),
            'grade/share',
            `${field}: "${grade[key]} %" is more than the whole`,
            'write at most 100 %',
          ),
        ]
      : [],
  );
}

function tighter(raw: RawRecord, grade: Grade, better: Grade): Problem[] {
  const limits = LIMITS.flatMap(([field, key, looser]) => {
    const [here, before] = [grade[key], better[key]];
    if (here === undefined) return [];
    const isTighter = before === undefined || Number(here) * looser < Number(before) * looser;
    if (!isTighter) return [];
    const above = before === undefined ? 'has no such limit' : `asks for ${before} %`;
    return [
      order(raw, field, `${field}: "${here} %" is stricter than "${better.id}", which ${above}`),
    ];
  });
  const lost = (better.allows ?? []).filter((kind) => !(grade.allows ?? []).includes(kind));
  const last = [grade.allows, ...LIMITS.map(([, key]) => grade[key])].every((said) => !said);
  if (lost.length === 0 || last) return limits;
  const stricter = `allows: lacks "${lost.join(' ')}", which "${better.id}" allows`;
  return [...limits, order(raw, 'allows', stricter)];
}

function order(raw: RawRecord, field: string, wrong: string): Problem {
  return problemAt(raw.placeOf([field]), 'grade/order', wrong, 'list the grades best first');
}
