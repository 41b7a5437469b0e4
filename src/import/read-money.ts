import type { decimalStyles } from '../model/imports.ts';

export type DecimalStyle = (typeof decimalStyles)[number];

/** A number of a file: decimal text without sign, which way it goes, and a currency that stood beside it. */
export interface FoundNumber {
  readonly decimal: string;
  readonly negative: boolean;
  readonly currency?: string;
}

/** Marks of the two sides of an account, in words that banks use. */
const SIDES: Readonly<Record<string, '-' | '+'>> = {
  S: '-',
  SOLL: '-',
  D: '-',
  DR: '-',
  DB: '-',
  DBIT: '-',
  DEBIT: '-',
  H: '+',
  HABEN: '+',
  C: '+',
  CR: '+',
  CRDT: '+',
  CREDIT: '+',
};

const SIGNS: Readonly<Record<string, string>> = { '€': 'EUR', '£': 'GBP' };

/**
 * Reads a number of one style: a sign before or behind, brackets for negative, the mark of a side, a currency before or behind.
 * Undefined when the number does not fit the style: `12.50` is no number where points part thousands.
 */
export function readNumber(text: string, style: DecimalStyle): FoundNumber | undefined {
  let rest = text.replace(/[\u00a0\u202f\u2009]/g, ' ').trim();
  let negative = false;
  let marks = 0;
  let currency: string | undefined;
  const mark = (isNegative: boolean) => {
    negative ||= isNegative;
    marks++;
  };

  for (;;) {
    rest = rest.trim();
    const bracketed = /^\((.*)\)$/.exec(rest);
    const sign = /^[-−+]|[-−+]$/.exec(rest);
    const word = /^[A-Za-z]+|(?<![A-Za-z])[A-Za-z]+$|^[€£]|[€£]$/.exec(rest);
    if (bracketed) {
      mark(true);
      rest = bracketed[1] ?? '';
    } else if (sign) {
      mark(sign[0] !== '+');
      rest = cut(rest, sign);
    } else if (word) {
      const side = SIDES[word[0].toUpperCase()];
      if (side) mark(side === '-');
      else if (currency === undefined && /^([A-Z]{3}|[€£])$/.test(word[0]))
        currency = SIGNS[word[0]] ?? word[0];
      else return undefined;
      rest = cut(rest, word);
    } else break;
  }
  const decimal = plainDecimal(rest, style);
  // Two signs on one number could mean either.
  if (decimal === undefined || marks > 1) return undefined;
  return { decimal, negative, ...(currency ? { currency } : {}) };
}

function cut(text: string, found: RegExpExecArray): string {
  return text.slice(0, found.index) + text.slice(found.index + found[0].length);
}

/** Digits with a decimal point, thousands joined; undefined when groups are not of three digits. */
function plainDecimal(text: string, style: DecimalStyle): string | undefined {
  const group = style.length === 7 ? '' : style.charAt(1);
  const point = style.at(-3) ?? '.';
  const [whole = '', fraction, ...more] = text.split(point);
  if (more.length > 0 || (fraction !== undefined && !/^\d{1,4}$/.test(fraction))) return undefined;
  const groups = group === '' ? [whole] : whole.split(group);
  const fits = groups.every((digits, index) =>
    index === 0 ? /^\d+$/.test(digits) : /^\d{3}$/.test(digits),
  );
  if (!fits || (groups.length > 1 && (groups[0]?.length ?? 0) > 3)) return undefined;
  const digits = groups.join('').replace(/^0+(?=\d)/, '');
  return digits.length > 12 ? undefined : [digits, fraction].filter(Boolean).join('.');
}
