import { dayNumber, dayOfNumber } from '../plan/day-number.ts';
import type { Range } from '../plan/forecast-types.ts';
import { type Day, showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { dayFrame, type Level } from './day-frame.ts';
import { namedDays } from './month-axis.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

/** What was forecast on a day; days as numbers. */
export interface Move {
  readonly day: Day;
  readonly finish: Range;
}

/** What a forecast is held against. */
export interface MoveGoals {
  readonly planned: Day;
  /** When it was really finished. */
  readonly finished: Day | undefined;
}

/**
 * How the forecast moved: an upright for each entry, from the 10 to the 90 % day of finish, with a dot at the middle one. Later is
 * higher. Planned finish dashed; the true one, once there is one, wide.
 */
export function drawForecastMoves(
  moves: readonly Move[],
  { planned, finished }: MoveGoals,
  language: string,
): Drawing | undefined {
  const [first, last] = [moves[0], moves.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const goals = [planned, finished].flatMap((day) => (day === undefined ? [] : dayNumber(day)));
  const low = Math.min(...goals, ...moves.map(({ finish }) => finish.low));
  const high = Math.max(...goals, ...moves.map(({ finish }) => finish.high));
  const air = Math.max(3, (high - low) * 0.08);
  const frame = dayFrame(
    { from: first.day, to: last.day },
    { range: [low - air, high + air], levels: monthLevels(low, high, language) },
    language,
  );
  const level = (day: Day, kind: string, name: string): SvgNode[] => {
    const y = frame.down(dayNumber(day));
    return [
      node('line', { x1: '0%', x2: '100%', y1: y, y2: y, class: kind }),
      node('text', { x: '100%', y: y - 4, 'text-anchor': 'end', class: 'small' }, name),
    ];
  };
  const title = wordsOf(language).plan.forecast.moves.drawing(
    moves.length,
    showShortDay(first.day, language),
    showShortDay(last.day, language),
  );
  return fluidDrawing(frame.height, title, [
    ...frame.nodes,
    ...moves.flatMap((move) => drawMove(move, frame)),
    ...level(planned, 'planned', 'planned'),
    ...(finished ? level(finished, 'wide', 'finished') : []),
  ]);
}

function drawMove({ day, finish }: Move, { place, down }: ReturnType<typeof dayFrame>): SvgNode[] {
  const x = across(place(day));
  return [
    node('line', { x1: x, x2: x, y1: down(finish.low), y2: down(finish.high) }),
    node('circle', { cx: x, cy: down(finish.middle), r: 3, class: 'mark' }),
  ];
}

function monthLevels(low: number, high: number, language: string): Level[] {
  const levels = namedDays(dayOfNumber(low), dayOfNumber(high), language);
  return levels.map(({ day, name }) => ({ value: dayNumber(day), name }));
}
