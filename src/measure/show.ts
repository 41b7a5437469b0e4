import { showNumber, showQuantity } from '../units/quantity.ts';
import { convertInterval, convertUnit, unitBeside } from '../units/unit.ts';
import { decimalsFor } from './uncertainty.ts';

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
}

/** How the reader wants it. */
export interface Reader {
  readonly language: string;
  readonly otherUnits: 'imperial' | 'us';
}

/** Shows a value with two significant digits of its U; a value read without known U keeps the decimals of its reading. */
export function showMeasured(
  { value, U, unit, decimals }: Showable,
  { language, otherUnits }: Reader,
): Shown {
  const places = U === undefined ? decimals : decimalsFor(U);
  const rounded = roundTo(value, places);
  const uncertainty =
    U === undefined ? undefined : showNumber(roundTo(U, places), places, language);
  const other = unitBeside(unit, otherUnits);
  return {
    text:
      uncertainty === undefined
        ? showQuantity(rounded, unit, places, language)
        : `${showNumber(rounded, places, language)} ± ${showQuantity(roundTo(U ?? 0, places), unit, places, language)}`,
    value: showQuantity(rounded, unit, places, language),
    U: uncertainty,
    beside: other && besideText(value, U ?? 10 ** -places, unit, other, language),
  };
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
