import { dayOfNumber } from '../plan/day-number.ts';
import type { EarnedPoint } from '../plan/project-earned.ts';
import { wordsOf } from '../words/words.ts';
import { dayFrame, pathOver } from './day-frame.ts';
import { hourLevels } from './hour-levels.ts';
import { type Drawing, fluidDrawing } from './svg.ts';

/** Planned hours dashed, earned narrow, actual wide, a point a week. */
export function drawEarned(curve: readonly EarnedPoint[], language: string): Drawing | undefined {
  const [first, last] = [curve[0], curve.at(-1)];
  if (first === undefined || last === undefined || first === last) return undefined;
  const most = Math.max(...curve.flatMap(({ planned, actual = 0 }) => [planned, actual]));
  const frame = dayFrame(
    { from: dayOfNumber(first.day), to: dayOfNumber(last.day) },
    { range: [0, Math.max(60, most) * 1.08], levels: hourLevels(most) },
    language,
  );
  const points = (of: 'planned' | 'earned' | 'actual') =>
    curve.flatMap((point) => {
      const value = point[of];
      return value === undefined ? [] : { day: dayOfNumber(point.day), value };
    });
  const title = wordsOf(language).plan.earned.drawing(curve.length);
  return fluidDrawing(frame.height, title, [
    ...frame.nodes,
    ...pathOver(points('actual'), frame, 'wide'),
    ...pathOver(points('earned'), frame, 'narrow'),
    ...pathOver(points('planned'), frame, 'planned'),
  ]);
}
