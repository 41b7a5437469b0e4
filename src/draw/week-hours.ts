import type { WorkedSpan } from '../hours/hours-by-time.ts';
import { addDays } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { dayFrame } from './day-frame.ts';
import { hourLevels } from './hour-levels.ts';
import { across, type Drawing, fluidDrawing, node } from './svg.ts';

/** Hours of each week as a wide upright on a scale that starts at zero. */
export function drawWeekHours(weeks: readonly WorkedSpan[], language: string): Drawing | undefined {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const most = Math.max(...weeks.map(({ minutes }) => minutes));
  const frame = dayFrame(
    { from: first.from, to: addDays(last.from, 7) },
    { range: [0, most * 1.08], levels: hourLevels(most) },
    language,
  );
  const bars = weeks
    .filter(({ minutes }) => minutes > 0)
    .map(({ from, minutes }) => {
      const x = across(frame.place(addDays(from, 3)));
      return node('line', {
        x1: x,
        x2: x,
        y1: frame.down(0),
        y2: frame.down(minutes),
        class: 'wide',
      });
    });
  const title = wordsOf(language).plan.hours.weekDrawing(weeks.length);
  return fluidDrawing(frame.height, title, [...frame.nodes, ...bars]);
}
