import type { Project } from '../book/types.ts';
import { type Day, showDay } from '../time/day.ts';
import { dayOfNumber } from './day-number.ts';
import type { ForecastDriver, ForecastResult } from './forecast-types.ts';

/** When it will be done, in a sentence; or why that can't be said. */
export function forecastWords(result: ForecastResult, language: string): string {
  const day = (number: number): string => showDay(dayOfNumber(number) as Day, language);
  if (result.kind === 'not yet') return `Not yet: ${result.reason}.`;
  if (result.kind === 'loop')
    return `Not yet: phases wait for each other (${result.ids.join(', ')}).`;
  if (result.kind === 'finished')
    return result.day === undefined ? 'Nothing is planned.' : `Finished on ${day(result.day)}.`;
  const { low, middle, high } = result.finish;
  if (low === high) return `Done on ${day(low)}, by nine draws in ten.`;
  return `Done between ${day(low)} and ${day(high)}, by eight draws in ten; by ${day(middle)} in half of them.`;
}

// Less says more of chance than of the phase (our choice, no source).
const LEAST_WEIGHT = 0.3;

/** What the finish hangs on most, a few names. */
export function drivenBy(drivers: readonly ForecastDriver[], project: Project, most = 3): string {
  const heavy = drivers
    .toSorted((one, other) => weightOf(other) - weightOf(one))
    .filter((driver) => weightOf(driver) >= LEAST_WEIGHT);
  const named = heavy.length > 0 ? heavy : drivers.filter(({ by }) => by === 'pace');
  return named
    .slice(0, most)
    .map((driver) => driverName(driver, project))
    .join('; ');
}

/** A wait whose end is known is the same in all draws, so nothing can follow it; how often it decides says enough. */
function weightOf({ by, share = 0, correlation }: ForecastDriver): number {
  return Math.abs(correlation ?? (by === 'wait' ? share : 0));
}

/** The name of a phase or a wait, or the pace. */
export function driverName({ by, id }: ForecastDriver, project: Project): string {
  if (by === 'pace') return 'the pace of the weeks to come';
  if (by === 'phase') return project.phases.find((phase) => phase.id === id)?.name ?? String(id);
  const rows = [...project.waits, ...project.preparations];
  return rows.find((row) => row.id === id)?.what ?? String(id);
}
