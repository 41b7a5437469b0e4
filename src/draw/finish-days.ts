import { dayOfNumber } from '../plan/day-number.ts';
import type { Forecast } from '../plan/forecast-types.ts';
import { type Day, daysBetween, showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { nameDays, namedDays } from './month-axis.ts';
import { linearScale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node } from './svg.ts';

const TOP = 4;
const BASE = 62;
const RANGE = 74;
const HEIGHT = 102;

/**
 * How the draws spread over days of finish, and below them the range:
 *
 *          _|‾|_
 *      ___|     |__|‾|____
 *         |---|------|        10, 50 and 90 % of draws
 */
export function drawFinishDays({ histogram, finish }: Forecast, language: string): Drawing {
  const [first, last] = [histogram[0], histogram.at(-1)];
  const from = dayOfNumber(first?.from ?? finish.low);
  const end = (last?.to ?? finish.high) + 1;
  const scale = linearScale([0, Math.max(1, daysBetween(from, dayOfNumber(end)))], [0.5, 99.5]);
  const place = (day: Day) => scale(daysBetween(from, day));
  const at = (number: number) => place(dayOfNumber(number));
  const down = linearScale([0, Math.max(...histogram.map(({ draws }) => draws), 1)], [BASE, TOP]);

  const taken = histogram.filter(({ draws }) => draws > 0);
  const bars = taken.map(({ from: start, to, draws }) =>
    node('rect', {
      x: across(at(start)),
      width: across(at(to + 1) - at(start)),
      y: down(draws),
      height: BASE - down(draws),
      class: 'open',
    }),
  );
  const tick = (day: number, size: number) =>
    node('line', { x1: across(at(day)), x2: across(at(day)), y1: RANGE - size, y2: RANGE + size });
  const base = node('line', { x1: '0%', x2: '100%', y1: BASE, y2: BASE, class: 'grid' });
  const range = [
    node('line', { x1: across(at(finish.low)), x2: across(at(finish.high)), y1: RANGE, y2: RANGE }),
    ...[tick(finish.low, 4), tick(finish.middle, 6), tick(finish.high, 4)],
  ];
  const [low = '', middle = '', high = ''] = [finish.low, finish.middle, finish.high].map((day) =>
    showShortDay(dayOfNumber(day), language),
  );
  const title = wordsOf(language).plan.forecast.drawing(low, middle, high);
  const named = namedDays(from, dayOfNumber(end), language);
  return fluidDrawing(HEIGHT, title, [
    base,
    ...bars,
    ...range,
    ...nameDays(named, HEIGHT - 4, place),
  ]);
}
