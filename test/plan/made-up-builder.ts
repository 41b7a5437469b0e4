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

/** Someone who builds. */
export interface Builder {
  /** Spread of the logarithm of actual over planned hours: of the builder as a whole, and of each phase around that. */
  readonly habit: number;
  readonly chance: number;
  readonly phases?: number;
  /** Share of the hours that goes into the phase after the first open one, which may go on beside it. */
  readonly aside?: number;
}

/** A build that is over: what was planned, and what was worked when. */
export interface MadeUpBuild {
  readonly planned: readonly number[];
  readonly rows: readonly WorkedRow[];
  /** The day each phase was finished on. */
  readonly finished: readonly DayNumber[];
  /** Each phase follows the one so many before it. */
  readonly back: number;
}

const FIRST = 20_000;
/** The same every day: days are then the finest step that a finish is known by, and the forecast knows the calendar as well as the builder. */
const calendar = workingCalendar({ week: [90, 90, 90, 90, 90, 90, 90], away: [], changed: [] });

/**
 * Someone who takes more or less than planned by habit, and by chance for each phase (both log-normal), and works a little every
 * day, more in some weeks than in others and a fifth of the weeks not at all.
 */
export function madeUpBuild(seed: number, builder: Builder): MadeUpBuild {
  const { habit, chance, phases = 10, aside = 0 } = builder;
  const { uniform, normal } = randomStream(seed);
  const level = Math.exp(habit * normal());
  const planned = Array.from({ length: phases }, () => 600 + Math.floor(uniform() * 2400));
  const left = planned.map((minutes) => minutes * level * Math.exp(chance * normal()));
  const rows: WorkedRow[] = [];
  const finished: DayNumber[] = planned.map(() => 0);
  let ofDay = 0;
  for (let day = FIRST; left.some((minutes) => minutes > 0); day++) {
    if (day % 7 === FIRST % 7) ofDay = uniform() < 0.2 ? 0 : (450 / 7) * Math.exp(0.4 * normal());
    let time = ofDay;
    while (time > 1e-9 && left.some((minutes) => minutes > 0)) {
      const [first = 0, second] = left.flatMap((minutes, index) => (minutes > 0 ? [index] : []));
      const at = second === first + 1 && uniform() < aside ? second : first;
      const minutes = Math.min(time, left[at] ?? 0);
      rows.push({ phase: at, day, minutes });
      time -= minutes;
      left[at] = (left[at] ?? 0) - minutes;
      if (left[at] === 0) finished[at] = day;
    }
  }
  return { planned, rows, finished, back: aside > 0 ? 2 : 1 };
}

/** What was known of it on a day, with the pace of twelve weeks. */
export function knownOn(build: MadeUpBuild, asOf: DayNumber): ForecastInputs {
  const past = build.rows.filter(({ day }) => day <= asOf);
  const phases = build.planned.map((planned, index): ForecastPhase => {
    const rows = past.filter((row) => row.phase === index);
    const spent = rows.reduce((sum, { minutes }) => sum + minutes, 0);
    const before = index >= build.back ? [`p${index - build.back}`] : [];
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
  const finish = Math.max(...finished);
  const count = Math.max(0, Math.ceil((finish - FIRST + 1) / 28) - 1);
  return Array.from({ length: count }, (_, index) => FIRST - 1 + 28 * (index + 1));
}
