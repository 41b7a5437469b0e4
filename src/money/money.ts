import { exponentOf } from './currency.ts';
import { divideHalfAwayFromZero } from './round.ts';

/** An amount in minor units (pence, cents) of an ISO 4217 currency; never a fraction. */
export interface Money {
  readonly minor: number;
  readonly currency: string;
}

/** An amount as it was written: decimal text, and its currency when one was given. */
export interface WrittenAmount {
  readonly decimal: string;
  readonly currency?: string | undefined;
}

/** No money, in a currency. */
export function zero(currency: string): Money {
  return { minor: 0, currency };
}

/** Splits `12.50 EUR` or `12.50` into its decimal text and code; undefined when it is neither. */
export function readAmount(text: string): WrittenAmount | undefined {
  const match = /^(\d{1,12}(?:\.\d{1,4})?)(?: ?([A-Z]{3}))?$/.exec(text);
  if (!match?.[1]) return undefined;
  return { decimal: match[1], currency: match[2] };
}

/**
 * Exact minor units of a decimal text; undefined when it has more decimals than the currency.
 *
 * @example toMinor('12.5', 'GBP') // { minor: 1250, currency: 'GBP' }
 */
export function toMinor(decimal: string, currency: string): Money | undefined {
  const exponent = exponentOf(currency);
  const [whole = '', fraction = ''] = decimal.split('.');
  if (exponent === undefined || fraction.length > exponent) return undefined;
  return { minor: Number(whole + fraction.padEnd(exponent, '0')), currency };
}

/** The sum of amounts that are all in the one currency. @throws when one is in another: currencies are never added. */
export function sum(amounts: Iterable<Money>, currency: string): Money {
  let minor = 0;
  for (const amount of amounts) {
    if (amount.currency !== currency)
      throw new Error(`cannot add ${amount.currency} to ${currency}`);
    minor += amount.minor;
  }
  return { minor, currency };
}

/** The same amount with the other sign. */
export function negate(amount: Money): Money {
  return { minor: amount.minor === 0 ? 0 : -amount.minor, currency: amount.currency };
}

/**
 * An amount at a recorded rate (decimal text, 1 `from` = rate `to`), rounded half away from zero to whole minor units.
 * Worked in whole numbers throughout, so the rate's digits count as written.
 */
export function convert(amount: Money, rate: string, to: string): Money {
  const [whole = '', fraction = ''] = rate.split('.');
  const fromExponent = exponentOf(amount.currency) ?? 0;
  const toExponent = exponentOf(to) ?? 0;

  // minor_to = minor_from × digits × 10^(toExponent − fromExponent − decimals of the rate)
  const product = BigInt(amount.minor) * BigInt(whole + fraction);
  const shift = toExponent - fromExponent - fraction.length;
  if (shift >= 0) return { minor: Number(product * 10n ** BigInt(shift)), currency: to };
  return { minor: Number(divideHalfAwayFromZero(product, 10n ** BigInt(-shift))), currency: to };
}

/** Decimal text of an amount, with all the decimals of its currency: `-1234.50`. */
export function toDecimal(amount: Money): string {
  const exponent = exponentOf(amount.currency) ?? 0;
  const digits = String(Math.abs(amount.minor)).padStart(exponent + 1, '0');
  const whole = digits.slice(0, digits.length - exponent);
  const sign = amount.minor < 0 ? '-' : '';
  return exponent === 0 ? sign + whole : `${sign}${whole}.${digits.slice(-exponent)}`;
}

/** An amount as a reader of the language sees it: `£1,234.50`, a true minus sign before a credit. */
export function showMoney(amount: Money, language: string): string {
  const format = formatOf(amount.currency, language);
  // The decimal text, not a double, so that no digit is lost in a large sum.
  return format.format(toDecimal(amount) as Intl.StringNumericLiteral).replace('-', '−');
}

/** A format takes longer to make than to use a hundred times. */
const formats = new Map<string, Intl.NumberFormat>();

function formatOf(currency: string, language: string): Intl.NumberFormat {
  const key = `${language} ${currency}`;
  const made = formats.get(key);
  if (made) return made;
  const exponent = exponentOf(currency) ?? 0;
  const format = new Intl.NumberFormat(language, {
    style: 'currency',
    currency,
    minimumFractionDigits: exponent,
    maximumFractionDigits: exponent,
  });
  formats.set(key, format);
  return format;
}
