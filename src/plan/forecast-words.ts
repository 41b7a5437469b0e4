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

/** What the finish hangs on most, a few names. */
export function drivenBy(drivers: readonly ForecastDriver[], project: Project, most = 3): string {
  return drivers
    .filter(({ share }) => share === undefined || share >= 0.1)
    .toSorted((one, other) => Math.abs(other.correlation ?? 0) - Math.abs(one.correlation ?? 0))
    .slice(0, most)
    .map((driver) => driverName(driver, project))
    .join(', ');
}

/** The name of a phase or a wait, or the pace. */
export function driverName({ by, id }: ForecastDriver, project: Project): string {
  if (by === 'pace') return 'the pace of the weeks to come';
  if (by === 'phase') return project.phases.find((phase) => phase.id === id)?.name ?? String(id);
  const rows = [...project.waits, ...project.preparations];
  return rows.find((row) => row.id === id)?.what ?? String(id);
}
