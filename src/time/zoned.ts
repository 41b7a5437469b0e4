import { formatOf } from './format-of.ts';

/** A date and time as a clock on a wall shows it, in no zone: `2025-03-08T14:05:00`. */
export type WallTime = string;

/** The zone as `Intl` knows it, or undefined for a name that it does not know. */
export function knownZone(name: string): string | undefined {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone;
  } catch {
    return undefined;
  }
}

/**
 * The moment at which clocks of a zone show a time. Of two such moments it is the first; a time that clocks skip
 * is taken by the offset before the gap (RFC 5545, 3.3.5).
 */
export function momentIn(timeZone: string, wall: WallTime): Date {
  const plain = Date.parse(`${wall}Z`);
  const [before, after] = [-1, 1].map((days) => offsetAt(timeZone, plain + days * 86_400_000));
  const moments = [plain - (before ?? 0), plain - (after ?? 0)];
  const found = moments.filter((moment) => moment + offsetAt(timeZone, moment) === plain);
  return new Date(found.length > 0 ? Math.min(...found) : (moments[0] ?? plain));
}

/** What clocks of a zone show at a moment. */
export function wallTimeIn(timeZone: string, moment: Date): WallTime {
  const at = Math.floor(moment.getTime() / 1000) * 1000;
  return new Date(at + offsetAt(timeZone, at)).toISOString().slice(0, 19);
}

/** How far clocks of a zone are ahead of UTC at a moment, in milliseconds. */
function offsetAt(timeZone: string, moment: number): number {
  const parts = formatOf('en', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(new Date(moment));
  const of = (type: string) => Number(parts.find((part) => part.type === type)?.value);
  const shown = Date.UTC(
    of('year'),
    of('month') - 1,
    of('day'),
    of('hour'),
    of('minute'),
    of('second'),
  );
  return shown - Math.floor(moment / 1000) * 1000;
}
