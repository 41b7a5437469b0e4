import type { Minutes } from '../time/duration.ts';
import type { Level } from './day-frame.ts';
import { roundTicks } from './scale.ts';

/** Round numbers of hours up to a number of minutes, as levels of a drawing in minutes. */
export function hourLevels(most: Minutes): Level[] {
  return roundTicks([0, Math.max(1, most / 60)], 4).map((hours) => ({
    value: hours * 60,
    name: `${hours} h`,
  }));
}
