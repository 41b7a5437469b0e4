import { correctionsOf, firstIds } from '../ledger/corrections.ts';
import type { Part, Preparation } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Understood } from '../read/understand.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** Work done here has no place, and a part is not fitted while it is away or being worked on. */
export const preparationsFit: Rule = ({ project }) => {
  const rows = standingRows(project, 'preparations');
  if (rows.length === 0) return [];
  const firstId = firstIds(correctionsOf(project.lists));
  const partsById = new Map(
    standingRows(project, 'parts').map((part) => [firstId(part.value.id), part]),
  );
  return rows.flatMap(({ raw, value }): Problem[] => [
    ...(value.place !== undefined && !value.out
      ? [
          problemAt(
            raw.placeOf(['place']),
            'preparation/place-at-home',
            `place: the preparation "${value.id}" has one, and was not sent out`,
            'write out: true, or take the place out',
          ),
        ]
      : []),
    ...value.parts.flatMap((id) => fittedTooSoon(partsById.get(firstId(id)), value)),
  ]);
};

/** A part that was on the machine before the work began may have come off for it, and is left alone. */
function fittedTooSoon(part: Understood<Part> | undefined, work: Preparation): Problem[] {
  const fitted = part?.value.fitted;
  if (part === undefined || fitted === undefined || fitted < work.date) return [];
  if (work.back !== undefined && fitted >= work.back) return [];
  const state = work.back === undefined ? 'is not back' : `came back on ${work.back}`;
  const fix =
    work.back === undefined
      ? `write the day it came back as "back" of "${work.id}"`
      : `correct "fitted", or "back" of "${work.id}"`;
  return [
    problemAt(
      part.raw.placeOf(['fitted']),
      'preparation/fitted-too-soon',
      `fitted: "${fitted}" for "${part.value.id}", which was prepared from ${work.date} (${work.id}) and ${state}`,
      fix,
    ),
  ];
}
