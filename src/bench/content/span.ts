import { addDays, type Day } from '../../time/day.ts';

const FIRST = '2015-01-03' as Day;
const DAYS = 3640;
const PHASES = 12;

/** First day of a made-up project. */
export const firstDay: Day = FIRST;

/** A day of the ten years of a project: 0 is the first, 1 the last. */
export const dayAt = (share: number): Day => addDays(FIRST, Math.round(share * DAYS));

export const later = (day: Day, days: number): Day => addDays(day, days);

/** No day after this one is in the made-up content. */
export const lastDay: Day = dayAt(1);

/** Days between which the work of a phase lies. */
export const phaseSpans: readonly { id: string; from: Day; to: Day }[] = Array.from(
  { length: PHASES },
  (_, index) => ({
    id: `phase-${index + 1}`,
    from: dayAt(index / PHASES),
    to: later(dayAt((index + 1) / PHASES), -1),
  }),
);

/** The phase of a day. */
export function phaseOn(day: Day): string {
  return phaseSpans.findLast(({ from }) => from <= day)?.id ?? 'phase-1';
}
