import { guessUnit, isUnit, soleUnit } from './unit.ts';

/** A value with its unit, and the digits it was written with. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
  /** Decimals as written, so that `0.70 mm` stays `0.70 mm`. */
  readonly decimals: number;
}

/** Why a text is no quantity, with what to type instead when that is known. */
export interface NoQuantity {
  readonly wrong: string;
  readonly fix?: string | undefined;
  /** The whole value, where its unit can mean one only. */
  readonly mend?: string | undefined;
}

/** Reads `640 kg` or `-0.02 mm`. A number without a unit, or with an unknown one, is refused. */
export function readQuantity(text: string): Quantity | NoQuantity {
  const match = /^([-+−]?\d{1,15}(?:\.\d{1,60})?)(?![\d.,])\s*([^\s,].*)?$/.exec(text);
  if (!match?.[1]) return { wrong: 'is not a number with a unit', fix: decimalComma(text) };

  const [, digits, unit] = match;
  if (unit === undefined)
    return { wrong: 'has no unit', fix: `write the unit after it, like "${digits} mm"` };
  if (!isUnit(unit)) {
    const guess = guessUnit(unit);
    const sole = soleUnit(unit);
    return {
      wrong: `has an unknown unit "${unit}"`,
      fix: guess && `write "${digits} ${guess}"`,
      mend: sole && `${digits} ${sole}`,
    };
  }
  return { value: readNumber(digits) ?? Number.NaN, unit, decimals: decimalsOf(digits) };
}

function decimalComma(text: string): string | undefined {
  if (!/^[-−]?\d+,\d+ ?\S*$/.test(text)) return undefined;
  const pointed = text.replace(',', '.');
  const read = readQuantity(pointed);
  return 'wrong' in read ? read.fix : `write "${pointed}"`;
}

/** A decimal number as text (a true minus sign is accepted), or undefined. No instrument shows more digits. */
export function readNumber(text: string): number | undefined {
  return /^[-+−]?\d{1,15}(\.\d{1,60})?$/.test(text) ? Number(text.replace('−', '-')) : undefined;
}

/** Digits after the decimal point of a written number. */
export function decimalsOf(text: string): number {
  return text.split('.')[1]?.length ?? 0;
}

/** A number with fixed decimals as a reader sees it: thin grouping by the language, a true minus sign. */
export function showNumber(value: number, decimals: number, language: string): string {
  return formatOf(language, Math.max(0, decimals)).format(value).replace('-', '−');
}

/** A format takes longer to make than to use a hundred times. */
const formats = new Map<string, Intl.NumberFormat>();

function formatOf(language: string, places: number): Intl.NumberFormat {
  const key = `${language} ${places}`;
  const made = formats.get(key);
  if (made) return made;
  const format = new Intl.NumberFormat(language, {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
    signDisplay: 'negative',
  });
  formats.set(key, format);
  return format;
}

/** A number and its unit: `640 kg`, `12 %`; degrees of arc stand close, and a plain ratio or count shows no unit. */
export function showQuantity(
  value: number,
  unit: string,
  decimals: number,
  language: string,
): string {
  return withUnit(showNumber(value, decimals, language), unit);
}

/** A number that is text already, with its unit after it. */
export function withUnit(number: string, unit: string): string {
  if (unit === '1' || unit === 'count') return number;
  return unit === '°' ? `${number}°` : `${number}\u00a0${unit}`;
}
