import { randomStream } from '../../src/measure/random.ts';
import { workingCalendar } from '../../src/plan/calendar.ts';
import type { DayNumber } from '../../src/plan/day-number.ts';
import type { ForecastInputs, ForecastPhase } from '../../src/plan/forecast-types.ts';
import { hoursPace } from '../../src/plan/pace.ts';
import { phase } from './drawn.ts';

interface WorkedRow {
  readonly phase: number;
  readonly day: DayNumber;
  readonly minutes: number;
}

/** A build that is over: what was planned, and what was worked when. */
export interface MadeUpBuild {
  readonly planned: readonly number[];
  readonly rows: readonly WorkedRow[];
  /** The day each phase was finished on. */
  readonly finished: readonly DayNumber[];
}

const FIRST = 20_000;
const PHASES = 10;
/** Work is done on one day of the week, so that the forecast knows the calendar as well as the builder does. */
const calendar = workingCalendar({ week: [0, 0, 0, 0, 600, 0, 0], away: [], changed: [] });

/**
 * Someone who takes more or less than planned by habit, and by chance for each phase (both log-normal), and works one day a
 * week, a fifth of the weeks not at all.
 */
export function madeUpBuild(
  seed: number,
  { habit, chance }: { habit: number; chance: number },
): MadeUpBuild {
  const { uniform, normal } = randomStream(seed);
  const level = Math.exp(habit * normal());
  const planned = Array.from({ length: PHASES }, () => 600 + Math.floor(uniform() * 2400));
  const left = planned.map((minutes) => minutes * level * Math.exp(chance * normal()));
  const rows: WorkedRow[] = [];
  const finished: DayNumber[] = [];
  for (let day = FIRST; finished.length < PHASES; day += 7) {
    let time = uniform() < 0.2 ? 0 : 450 * Math.exp(0.4 * normal());
    while (time > 0 && finished.length < PHASES) {
      const at = finished.length;
      const minutes = Math.min(time, left[at] ?? 0);
      rows.push({ phase: at, day, minutes });
      time -= minutes;
      left[at] = (left[at] ?? 0) - minutes;
      if (left[at] === 0) finished.push(day);
    }
  }
  return { planned, rows, finished };
}

/** What was known of it on a day, with the pace of twelve weeks. */
export function knownOn(build: MadeUpBuild, asOf: DayNumber): ForecastInputs {
  const past = build.rows.filter(({ day }) => day <= asOf);
  const phases = build.planned.map((planned, index): ForecastPhase => {
    const rows = past.filter((row) => row.phase === index);
    const spent = rows.reduce((sum, { minutes }) => sum + minutes, 0);
    const before = index > 0 ? [`p${index - 1}`] : [];
    const known = { ...phase(`p${index}`, planned, ...before), spent };
    const finished = build.finished[index] ?? Number.POSITIVE_INFINITY;
    if (finished <= asOf) return { ...known, state: 'finished', finished };
    return { ...known, state: spent > 0 ? 'under way' : 'not started' };
  });
  const pace = hoursPace(past, { asOf, weeks: 12, calendar }).map(({ minutes }) => minutes);
  return { phases, waits: [], pace, calendar, asOf, seed: 3, draws: 200 };
}

/** Every fourth week of it, before it was finished. */
export function daysBeforeFinish({ finished }: MadeUpBuild): DayNumber[] {
  const finish = finished.at(-1) ?? FIRST;
  const count = Math.max(0, Math.ceil((finish - FIRST) / 28) - 1);
  return Array.from({ length: count }, (_, index) => FIRST + 28 * (index + 1));
}
