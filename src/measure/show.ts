import { showNumber, showQuantity, withUnit } from '../units/quantity.ts';
import { convertInterval, convertUnit, unitBeside } from '../units/unit.ts';
import { decimalsFor } from './uncertainty.ts';
import type { Interval } from './value-on-day.ts';

/** A measured value ready to be read. */
export interface Shown {
  /** `691.3 ± 2.4 kg`, digits by U; without U as it was read. */
  readonly text: string;
  /** The value alone, with its unit. */
  readonly value: string;
  /** `± 2.4 kg` as a number only, or undefined. */
  readonly U: string | undefined;
  /** The same in the other system of units, where there is one. */
  readonly beside: string | undefined;
}

/** What is needed to show a value. */
export interface Showable {
  readonly value: number;
  readonly U: number | undefined;
  readonly unit: string;
  readonly decimals: number;
  /** A value that was worked out stands in parentheses, as on a drawing. */
  readonly kind?: 'read' | 'worked';
  /** Shown instead of ± U where it is given. */
  readonly interval?: Interval | undefined;
}

/** How the reader wants it. */
export interface Reader {
  readonly language: string;
  readonly otherUnits: 'imperial' | 'us';
}

/**
 * Shows a value with two significant digits of its U; a value without known U keeps its own decimals.
 *
 * @example 806.0 ± 5.4 kg // read
 * @example (769.4 ± 8.1 mm) // worked out
 * @example (769.4 +9.2 −7.9 mm) // worked out, the interval drawn
 */
export function showMeasured(measured: Showable, { language, otherUnits }: Reader): Shown {
  const { value, unit, decimals, interval } = measured;
  const U = interval === undefined ? measured.U : (interval.high - interval.low) / 2;
  const places = U === undefined ? decimals : decimalsFor(U);
  const number = (size: number) => showNumber(roundTo(size, places), places, language);
  const alone = showQuantity(roundTo(value, places), unit, places, language);
  const other = unitBeside(unit, otherUnits);
  const text =
    U === undefined
      ? alone
      : withUnit(`${number(value)} ${deviations(value, U, interval, number)}`, unit);
  return {
    text: measured.kind === 'worked' ? `(${text})` : text,
    value: alone,
    U: U === undefined || interval ? undefined : number(U),
    beside: other && besideText(value, U ?? 10 ** -places, unit, other, language),
  };
}

/** `± 8.1`, or `+9.2 −7.9` where a drawn interval is uneven in the digits shown. */
function deviations(
  value: number,
  U: number,
  interval: Interval | undefined,
  number: (size: number) => string,
): string {
  if (interval === undefined) return `± ${number(U)}`;
  const [over, under] = [number(interval.high - value), number(value - interval.low)];
  return over === under ? `± ${over}` : `+${over} −${under}`;
}

/** Shows a difference: its sign is always written, and it converts without offset. */
export function showDifference({ value, U, unit, decimals }: Showable, language: string): string {
  const places = U === undefined ? decimals : decimalsFor(U);
  const rounded = roundTo(value, places);
  const sign = rounded > 0 ? '+' : '';
  const width = unit === '°C' ? 'K' : unit;
  const size = `${sign}${showNumber(rounded, places, language)}`;
  return U === undefined
    ? `${sign}${showQuantity(rounded, width, places, language)}`
    : `${size} ± ${showQuantity(roundTo(U, places), width, places, language)}`;
}

// The other unit gets as many digits as the first one's uncertainty (or last digit) is worth there.
function besideText(
  value: number,
  size: number,
  from: string,
  to: string,
  language: string,
): string {
  const width = convertInterval(size, convertUnit(value || 1, from, to), from, to);
  const places = Math.ceil(-Math.log10(width));
  return showQuantity(roundTo(convertUnit(value, from, to), places), to, places, language);
}

/** Rounds half away from zero to decimals; negative decimals round to tens and hundreds. */
export function roundTo(value: number, decimals: number): number {
  const scaled = Number(`${Math.abs(value)}e${decimals}`);
  const rounded = Number(`${Math.round(scaled)}e${-decimals}`);
  return Number.isNaN(rounded) ? value : Math.sign(value) * rounded;
}
