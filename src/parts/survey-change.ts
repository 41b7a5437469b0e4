import type { Grade, Survey } from '../model/kinds.ts';
import type { Graded } from './grade.ts';
import { changeOfRemaining, type RemainingChange } from './remaining.ts';
import type { SurveyedPart, SurveyOnDay } from './survey.ts';

/** How a part stands to an earlier survey, by its grades. */
export type Turn = 'better' | 'worse' | 'same' | 'undecided';

/** A part that two surveys looked at. */
export interface PartChange {
  /** The survey that it is held against. */
  readonly since: Survey;
  readonly before: SurveyedPart;
  readonly after: SurveyedPart;
  readonly turn: Turn;
  /** Whether another source's version stands in the earlier one's place. */
  readonly replaced: boolean;
  /** Change of the least thickness left, in percentage points, where both read it. */
  readonly remaining: RemainingChange | undefined;
}

/**
 * What a survey says of parts that an earlier one had looked at, in its own order. A version is held against itself in the newest of the
 * earlier surveys that has it, else against the one that was on the base machine, else against the newest other.
 */
export function changesSince(
  earlier: readonly SurveyOnDay[],
  later: SurveyOnDay,
  { scale, base }: { scale: readonly Grade[]; base: readonly string[] },
): readonly PartChange[] {
  const known = earlier.flatMap(({ survey, parts }) => parts.map((part) => ({ survey, part })));
  return later.parts.flatMap((after) => {
    const same = known.filter(({ part }) => part.part.id === after.part.id);
    const found =
      same.findLast(({ part }) => part.source === after.source) ??
      same.findLast(({ part }) => base.includes(part.source)) ??
      same.at(-1);
    return found ? [changeOf(found.survey, found.part, after, scale)] : [];
  });
}

function changeOf(
  since: Survey,
  before: SurveyedPart,
  after: SurveyedPart,
  scale: readonly Grade[],
): PartChange {
  return {
    since,
    before,
    after,
    turn: turnOf(before.graded, after.graded, scale),
    replaced: before.source !== after.source,
    remaining: before.least && after.least && changeOfRemaining(before.least, after.least),
  };
}

/** Better or worse only where no grade that is still possible on one side reaches one of the other. */
export function turnOf(before: Graded, after: Graded, scale: readonly Grade[]): Turn {
  const range = ({ grades }: Graded) => grades.map((grade) => scale.indexOf(grade));
  const [earlier, later] = [range(before), range(after)];
  if (Math.max(...later) < Math.min(...earlier)) return 'better';
  if (Math.min(...later) > Math.max(...earlier)) return 'worse';
  return before.decided && after.decided ? 'same' : 'undecided';
}
