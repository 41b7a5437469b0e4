import type { Day } from '../time/day.ts';
import { showDuration } from '../time/duration.ts';
import { knownZone, momentIn, type WallTime, wallTimeIn } from '../time/zoned.ts';
import type { ContentLine } from './calendar-lines.ts';

/** The day of an event, where the machine stands, and how long it lasted. */
export type EventTime = { readonly day: Day; readonly hours: string } | { readonly wrong: string };

/** A moment, and the zone whose days count from it. */
interface Point {
  readonly moment: Date;
  readonly zone: string;
}

const MINUTES_PER_DAY = 1440;

/**
 * Time of an event by DTSTART and DTEND or DURATION (RFC 5545, 3.6.1). A time without a zone is one of the project's own zone;
 * the day is the one on which the event begins there. Seconds are rounded to the nearest minute, which is all a row has.
 */
export function eventTime(
  property: (name: string) => ContentLine | undefined,
  timeZone: string,
): EventTime {
  const start = property('DTSTART');
  const [end, duration] = [property('DTEND'), property('DURATION')];
  if (start === undefined) return { wrong: 'it has no DTSTART' };
  if (isDay(start) || (end && isDay(end)))
    return { wrong: 'it is all day and says no hours; give it a start and an end' };
  if (end && duration) return { wrong: 'it has both DTEND and DURATION' };
  if (!end && !duration)
    return { wrong: 'it has neither DTEND nor DURATION, so it ends as it begins' };

  const from = pointOf(start, timeZone);
  if (typeof from === 'string') return { wrong: from };
  const to = end ? pointOf(end, timeZone) : later(from, duration?.value.trim() ?? '');
  if (typeof to === 'string') return { wrong: to };
  const minutes = Math.round((to.moment.getTime() - from.moment.getTime()) / 60_000);
  if (minutes <= 0)
    return { wrong: minutes < 0 ? 'it ends before it begins' : 'it lasts no minute' };
  if (minutes > MINUTES_PER_DAY)
    return { wrong: `it lasts ${showDuration(minutes)}, more than a day's work can` };
  const day = wallTimeIn(timeZone, from.moment).slice(0, 10) as Day;
  return { day, hours: showDuration(minutes) };
}

function isDay({ params, value }: ContentLine): boolean {
  return params.get('VALUE')?.toUpperCase() === 'DATE' || /^\d{8}$/.test(value.trim());
}

/** A DATE-TIME (3.3.5): in UTC, in the zone it names, or in none. */
function pointOf({ name, params, value }: ContentLine, timeZone: string): Point | string {
  const [, year, month, day, hour, minute, second, utc] =
    /^(\d{4})(\d\d)(\d\d)T([01]\d|2[0-3])([0-5]\d)([0-5]\d|60)(Z?)$/.exec(value.trim()) ?? [];
  // A leap second is no minute of its own.
  const wall = `${year}-${month}-${day}T${hour}:${minute}:${second === '60' ? '59' : second}`;
  const exists = year !== undefined && !Number.isNaN(Date.parse(`${wall}Z`));
  if (!exists || !new Date(`${wall}Z`).toISOString().startsWith(wall))
    return `"${value}" in ${name} is no date and time`;
  if (utc) return { moment: new Date(`${wall}Z`), zone: 'UTC' };
  const named = params.get('TZID');
  if (named === undefined) return { moment: momentIn(timeZone, wall), zone: timeZone };
  const zone = zoneOf(named);
  if (zone === undefined)
    return `its time zone "${named}" is none that is known here; let its program write names like Europe/London`;
  return { moment: momentIn(zone, wall), zone };
}

/** Names with a slash before them are a registry's own (3.2.19); the zone is the end of them. */
function zoneOf(named: string): string | undefined {
  const name = named.trim();
  if (!name.startsWith('/')) return knownZone(name);
  const parts = name.split('/').slice(2);
  return parts.map((_, index) => knownZone(parts.slice(index).join('/'))).find((zone) => zone);
}

/** Days and weeks of a DURATION (3.3.6) are days of the calendar, which may have 23 hours; its hours are exact. */
function later({ moment, zone }: Point, text: string): Point | string {
  const found =
    /^([+-])?P(?:(\d+)W|(?:(\d+)D)?(?:T(?=\d)(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?)$/.exec(text);
  if (!found || /[PT]$/.test(text)) return `"${text}" in DURATION is no length of time`;
  const [weeks = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = found
    .slice(2)
    .map((part) => Number(part ?? 0));
  if (found[1] === '-') return 'it ends before it begins';
  const wall = Date.parse(`${wallTimeIn(zone, moment)}Z`) + (weeks * 7 + days) * 86_400_000;
  const whole = weeks + days > 0;
  const shown: WallTime = whole ? new Date(wall).toISOString().slice(0, 19) : '';
  const base = whole ? momentIn(zone, shown) : moment;
  const exact = ((hours * 60 + minutes) * 60 + seconds) * 1000;
  return { moment: new Date(base.getTime() + exact), zone };
}
