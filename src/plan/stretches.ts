import type { DayRange } from './calendar.ts';
import type { DayNumber } from './day-number.ts';

/**
 * Days worked as stretches, so that a phase that was left for a while shows the gap. Days no more than `together` apart are one
 * stretch: with 7 a builder of weekends has no gap between two weekends.
 */
export function stretchesOf(days: readonly DayNumber[], together = 7): DayRange[] {
  const stretches: DayRange[] = [];
  for (const day of days.toSorted((one, other) => one - other)) {
    const last = stretches.at(-1);
    if (last && day - last.to <= together) stretches[stretches.length - 1] = { ...last, to: day };
    else stretches.push({ from: day, to: day });
  }
  return stretches;
}
