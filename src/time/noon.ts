import type { Day } from './day.ts';
import { formatOf } from './format-of.ts';

/**
 * Noon of a day in a time zone as an RFC 3339 date-time, `2025-03-08T12:00:00+00:00`.
 * Feeds want a time and a log has days; noon is the same day for most readers.
 */
export function noonIn(timeZone: string, day: Day): string {
  const format = formatOf('en', { timeZone, timeZoneName: 'longOffset' });
  const name =
    format.formatToParts(new Date(`${day}T12:00:00Z`)).find(({ type }) => type === 'timeZoneName')
      ?.value ?? 'GMT';
  return `${day}T12:00:00${name === 'GMT' ? '+00:00' : name.slice(3)}`;
}
