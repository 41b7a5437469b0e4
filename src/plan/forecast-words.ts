import type { Project } from '../book/types.ts';
import { type Day, showDay } from '../time/day.ts';
import { say } from '../words/said.ts';
import { tongueOf, type Words } from '../words/words.ts';
import { dayOfNumber } from './day-number.ts';
import type { ForecastDriver, ForecastResult } from './forecast-types.ts';

/** When it will be done, in a sentence; or why that can't be said. */
export function forecastWords(result: ForecastResult, language: string): string {
  const day = (number: number): string => showDay(dayOfNumber(number) as Day, language);
  const { words } = tongueOf(language);
  const said = words.plan.forecast;
  if (result.kind === 'not yet') return said.notYet(say(result.reason, words));
  if (result.kind === 'loop') return said.loop(result.ids.join(', '));
  if (result.kind === 'finished')
    return result.day === undefined ? said.nothingPlanned : said.finishedOn(day(result.day));
  const { low, middle, high } = result.finish;
  if (low === high) return said.doneOn(day(low));
  return said.doneBetween(day(low), day(high), day(middle));
}

// Less says more of chance than of the phase (our choice, no source).
const LEAST_WEIGHT = 0.3;

const MOST_NAMES = 3;

/** What the finish hangs on most, a few names. */
export function drivenBy(
  drivers: readonly ForecastDriver[],
  project: Project,
  words: Words,
): string {
  const heavy = drivers
    .toSorted((one, other) => weightOf(other) - weightOf(one))
    .filter((driver) => weightOf(driver) >= LEAST_WEIGHT);
  const named = heavy.length > 0 ? heavy : drivers.filter(({ by }) => by === 'pace');
  return named
    .slice(0, MOST_NAMES)
    .map((driver) => driverName(driver, project, words))
    .join('; ');
}

/** A wait whose end is known is the same in all draws, so nothing can follow it; how often it decides says enough. */
function weightOf({ by, share = 0, correlation }: ForecastDriver): number {
  return Math.abs(correlation ?? (by === 'wait' ? share : 0));
}

/** In how many of a hundred draws a driver decides the finish; undefined where it is in every one. */
export function shareText({ share }: ForecastDriver): string | undefined {
  return share === undefined ? undefined : `${Math.round(share * 100)} %`;
}

/** The name of a phase or a wait, or the pace. */
export function driverName({ by, id }: ForecastDriver, project: Project, { plan }: Words): string {
  if (by === 'pace') return plan.forecast.pace;
  if (by === 'phase') return project.phases.find((phase) => phase.id === id)?.name ?? String(id);
  const rows = [...project.waits, ...project.preparations];
  return rows.find((row) => row.id === id)?.what ?? String(id);
}
