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

/** Places of a week in `shares`: where each of its days begins, and where it ends. */
const PLACES = 8;

/**
 * A clock for a pace and a calendar. `dayShares` is how much of a usual week each day from the start on has room for (whole
 * weeks of days); a week of a pace of 600 minutes in which one of two equal days is away has 300.
 */
export function workClock(pace: PaceDraws, dayShares: Float64Array): WorkClock {
  const horizon = dayShares.length;
  const weeks = horizon / 7;
  const shares = sharesByWeek(dayShares);
  // Minutes from the start of the draw to the start of each week, and the pace of the week; filled as far as was asked.
  const worked = new Float64Array(weeks + 1);
  const paces = new Float64Array(weeks);
  let filled = 0;
  let current = 0;

  function fillWeek(): void {
    const choice = Math.floor(uniformAt(pace.seed, current, filled) * pace.width);
    paces[filled] = pace.values[current * pace.width + choice] as number;
    worked[filled + 1] = workedAt(filled, 7);
    filled++;
  }

  /** Minutes from the start of the draw to a day of a week, 7 for its end. */
  function workedAt(week: number, day: number): number {
    const share = shares[week * PLACES + day] as number;
    return (worked[week] as number) + (paces[week] as number) * share;
  }

  function begin(draw: number): void {
    current = draw;
    filled = 0;
  }

  function advance(from: number, minutes: number): number {
    if (minutes < LEAST || from >= horizon) return Math.min(from, horizon);
    const begun = Math.floor(from);
    let week = Math.floor(begun / 7);
    let day = begun - 7 * week;
    while (filled <= week) fillWeek();
    const before = workedAt(week, day);
    const goal = before + (from - begun) * (workedAt(week, day + 1) - before) + minutes;
    while ((worked[filled] as number) < goal) {
      if (filled >= weeks) return horizon;
      fillWeek();
    }
    while ((worked[week + 1] as number) < goal) {
      week++;
      day = 0;
    }
    while (workedAt(week, day + 1) < goal) day++;
    const start = workedAt(week, day);
    return 7 * week + day + (goal - start) / (workedAt(week, day + 1) - start);
  }

  return { horizon, begin, advance };
}

/** Which share of a usual week lies between the start of each week and each of its days. */
function sharesByWeek(dayShares: Float64Array): Float64Array {
  const shares = new Float64Array((dayShares.length / 7) * PLACES);
  for (const [index, share] of dayShares.entries()) {
    const place = Math.floor(index / 7) * PLACES + (index % 7);
    shares[place + 1] = (shares[place] as number) + share;
  }
  return shares;
}
