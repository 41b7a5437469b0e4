import { stringify } from 'yaml';
import type { Day } from '../time/day.ts';

/** An entry as far as photos are told to it. */
export interface DatedEntry {
  readonly slug: string;
  readonly date: Day;
}

/** The entry that a photo belongs to: of the day it was taken, else the next one after, which tells what was done until then. */
export function entryFor(
  taken: Day | undefined,
  entries: readonly DatedEntry[],
): DatedEntry | undefined {
  if (taken === undefined) return undefined;
  const from = entries.filter(({ date }) => date >= taken);
  return from.reduce<DatedEntry | undefined>(
    (best, one) => (best === undefined || one.date < best.date ? one : best),
    undefined,
  );
}

/**
 * A photo's record to be completed by hand. It never says that nothing must be hidden, which only someone who looked can say;
 * it is not written for the builder, since a photo with a record is published.
 */
export function photoRecord(file: string): string {
  const id = file
    .toLowerCase()
    .replace(/\.[^.]*$/, '')
    .replace(/[^a-z0-9]+/g, '-');
  const record = {
    id,
    file,
    alt: 'what it shows, for someone who cannot see it',
  };
  return stringify([record], { lineWidth: 0 });
}
