import { workingCalendar } from '../../src/plan/calendar.ts';
import type { ForecastInputs, ForecastPhase } from '../../src/plan/forecast-types.ts';
import { evenings, numberOf } from './calendars.ts';
import { phase } from './drawn.ts';

/** A finished phase with what it took. */
export function done(id: string, planned: number, spent: number, finished: string): ForecastPhase {
  return { ...phase(id, planned), spent, state: 'finished', finished: numberOf(finished) };
}

/** An invented shaper that is half rebuilt: two phases done, one begun, two to come, and a wait. */
export const shaper: ForecastInputs = {
  phases: [
    done('strip', 600, 660, '2025-01-25'),
    done('clean', 900, 1350, '2025-03-01'),
    { ...phase('ram', 1200, 'clean'), state: 'under way', spent: 500 },
    phase('table', { least: 600, likely: 800, most: 2000 }, 'clean'),
    phase('paint', 480, ['ram', 2], 'table'),
  ],
  waits: [
    {
      id: 'oil-lines',
      phases: ['paint'],
      from: numberOf('2025-06-01'),
      to: numberOf('2025-09-30'),
    },
  ],
  pace: [600, 480, 0, 720, 600, 360],
  calendar: workingCalendar(evenings),
  asOf: numberOf('2025-04-20'),
  seed: 11,
  draws: 2000,
};
