import { formatOf } from './format-of.ts';

/** A calendar day as `YYYY-MM-DD`, with no time and no zone; it sorts as text. */
export type Day = string & { readonly day: unique symbol };

const MS_PER_DAY = 86_400_000;

/** Reads `YYYY-MM-DD` (ISO 8601 calendar date, extended form); undefined when the day does not exist. */
export function parseDay(text: string): Day | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const moment = new Date(`${text}T00:00:00Z`);
  if (Number.isNaN(moment.getTime())) return undefined;

  return moment.toISOString().startsWith(text) ? (text as Day) : undefined;
}

/**
 * The one calendar day that a mistyped date can mean, as text to type instead, or undefined.
 *
 * Year first (`2025/3/8`) has one reading. Day and month first is only guessed when one of them is over 12.
 * A month in letters (`7 March 2025`, `7. März 2025`, `March 7, 2025`) has one reading.
 */
export function guessDay(text: string): Day | undefined {
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  if (yearFirst) return dayOf(yearFirst[1], yearFirst[2], yearFirst[3]);

  const named =
    /^(\d{1,2})(?:\.|st|nd|rd|th)?[ -](\p{L}{3,})\.?,?[ -](\d{4})$/u.exec(text) ??
    monthFirst(/^(\p{L}{3,})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/u.exec(text));
  if (named) return dayOf(named[3], monthNamed(named[2] ?? ''), named[1]);

  const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/.exec(text);
  if (!yearLast) return undefined;
  const [, first, second, year] = yearLast;
  if (Number(first) > 12) return dayOf(year, second, first);
  return Number(second) > 12 ? dayOf(year, first, second) : undefined;
}

function monthFirst(match: RegExpExecArray | null) {
  return match && [match[0], match[2], match[1], match[3]];
}

/** English and German names of the months; the first three letters of one are a name too. */
const MONTHS: readonly (readonly string[])[] = [
  ['january', 'januar', 'jänner'],
  ['february', 'februar'],
  ['march', 'märz', 'mrz'],
  ['april'],
  ['may', 'mai'],
  ['june', 'juni'],
  ['july', 'juli'],
  ['august'],
  ['september', 'sept'],
  ['october', 'oktober'],
  ['november'],
  ['december', 'dezember'],
];

function monthNamed(name: string): string {
  const folded = name.toLowerCase();
  const index = MONTHS.findIndex((names) =>
    names.some((month) => month === folded || month.slice(0, 3) === folded),
  );
  return String(index + 1);
}

function dayOf(year = '', month = '', day = ''): Day | undefined {
  return parseDay(`${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`);
}

/** Whole days from one day to another; negative when `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / MS_PER_DAY);
}

/** The day a number of days later (or earlier, when negative). */
export function addDays(day: Day, days: number): Day {
  return new Date(Date.parse(day) + days * MS_PER_DAY).toISOString().slice(0, 10) as Day;
}

/** The latest of the days given, or undefined when there is none. */
export function latestDay(days: Iterable<Day | undefined>): Day | undefined {
  let latest: Day | undefined;
  for (const day of days)
    if (day !== undefined && (latest === undefined || day > latest)) latest = day;
  return latest;
}

/** The earliest of the days given, or undefined when there is none. */
export function earliestDay(days: Iterable<Day | undefined>): Day | undefined {
  let earliest: Day | undefined;
  for (const day of days)
    if (day !== undefined && (earliest === undefined || day < earliest)) earliest = day;
  return earliest;
}

/** The calendar day of a moment in a time zone (IANA name). */
export function dayIn(timeZone: string, moment: Date): Day {
  return formatOf('en-CA', { timeZone, dateStyle: 'short' }).format(moment) as Day;
}

/** A day as a reader sees it, `8 March 2025` in British English; the zone plays no part. */
export function showDay(day: Day, language: string): string {
  return formatOf(language, LONG).format(new Date(day));
}

/** A day in little space, `8 Mar 2025`. */
export function showShortDay(day: Day, language: string): string {
  return formatOf(language, SHORT).format(new Date(day));
}

const LONG = { timeZone: 'UTC', dateStyle: 'long' } as const;
const SHORT = { timeZone: 'UTC', day: 'numeric', month: 'short', year: 'numeric' } as const;
