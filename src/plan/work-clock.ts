import { uniformAt } from './keyed-random.ts';

// Less than this much of a minute is the rounding of sums.
const LEAST = 1e-6;

/** How much is worked in each week to come, in each draw. */
export interface PaceDraws {
  /** `width` minutes a week for each draw: the last weeks, drawn again from themselves. */
  readonly values: Float64Array;
  readonly width: number;
  /** Chooses one of a draw's paces for each of its weeks. */
  readonly seed: number;
}

/** Turns work into time, in days after the start; a draw at a time. */
export interface WorkClock {
  /** Where time ends: what is not done by then counts as done then. */
  readonly horizon: number;
  begin(draw: number): void;
  /** When so many minutes, begun at a time, are done. */
  advance(from: number, minutes: number): number;
}

/**
 * A clock for a pace and a calendar. `dayShares` is how much of a usual week each day from the start on has room for (whole
 * weeks of days); a week of a pace of 600 minutes in which one of two equal days is away has 300.
 */
export function workClock(pace: PaceDraws, dayShares: Float64Array): WorkClock {
  const horizon = dayShares.length;
  // Minutes from the start of the draw to the start of each day; filled by the week, as far as was asked.
  const worked = new Float64Array(horizon + 1);
  let filled = 0;
  let current = 0;

  function fillWeek(): void {
    const choice = Math.floor(uniformAt(pace.seed, current, filled / 7) * pace.width);
    const minutes = pace.values[current * pace.width + choice] as number;
    for (const end = filled + 7; filled < end; filled++)
      worked[filled + 1] = (worked[filled] as number) + minutes * (dayShares[filled] as number);
  }

  function begin(draw: number): void {
    current = draw;
    filled = 0;
  }

  function advance(from: number, minutes: number): number {
    if (minutes < LEAST || from >= horizon) return Math.min(from, horizon);
    let day = Math.floor(from);
    while (filled <= day) fillWeek();
    const before = worked[day] as number;
    const goal = before + (from - day) * ((worked[day + 1] as number) - before) + minutes;
    while ((worked[filled] as number) < goal) {
      if (filled >= horizon) return horizon;
      day = filled;
      fillWeek();
    }
    while (day + 7 < filled && (worked[day + 7] as number) < goal) day += 7;
    while ((worked[day + 1] as number) < goal) day++;
    const start = worked[day] as number;
    return day + (goal - start) / ((worked[day + 1] as number) - start);
  }

  return { horizon, begin, advance };
}
