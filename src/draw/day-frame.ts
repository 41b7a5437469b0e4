import { type Day, daysBetween } from '../time/day.ts';
import { nameDays, namedDays } from './month-axis.ts';
import { linearScale, type Scale } from './scale.ts';
import { across, node, type SvgNode } from './svg.ts';

/** A level that is named at the left. */
export interface Level {
  readonly value: number;
  readonly name: string;
}

/** Days across, values up. */
export interface DayFrame {
  /** Per cent across of the start of a day. */
  readonly place: (day: Day) => number;
  /** Pixels down of a value. */
  readonly down: Scale;
  readonly height: number;
  /** Grid, names of months and of levels. */
  readonly nodes: readonly SvgNode[];
}

const TOP = 14;
const BOTTOM = 174;
const HEIGHT = 200;
/** What is drawn starts here; the names of levels lie on their lines, left of it. */
const LEFT = 15;

/** The ground of a drawing over time. */
export function dayFrame(
  { from, to }: { from: Day; to: Day },
  { range, levels }: { range: readonly [number, number]; levels: readonly Level[] },
  language: string,
): DayFrame {
  const scale = linearScale([0, Math.max(1, daysBetween(from, to))], [LEFT, 99.5]);
  const place = (day: Day) => scale(daysBetween(from, day));
  const down = linearScale(range, [BOTTOM, TOP]);
  const named = namedDays(from, to, language);
  const grid = levels.flatMap(({ value, name }) => [
    node('line', { x1: '0%', x2: '100%', y1: down(value), y2: down(value), class: 'grid' }),
    node('text', { x: '0%', y: down(value) - 4, class: 'small' }, name),
  ]);
  return { place, down, height: HEIGHT, nodes: [...grid, ...nameDays(named, HEIGHT - 6, place)] };
}

/** A line of straight pieces from day to day. */
export function pathOver(
  points: readonly { readonly day: Day; readonly value: number }[],
  { place, down }: DayFrame,
  kind: string,
): SvgNode[] {
  return points.slice(1).map(({ day, value }, index) => {
    const before = points[index] ?? { day, value };
    return node('line', {
      x1: across(place(before.day)),
      y1: down(before.value),
      x2: across(place(day)),
      y2: down(value),
      class: kind,
    });
  });
}
