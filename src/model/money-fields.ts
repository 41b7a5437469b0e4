import { currencyCodes, exponentOf } from '../money/currency.ts';
import { readAmount, type WrittenAmount } from '../money/money.ts';
import { suggest } from '../read/nearest.ts';
import { decimalsOf } from '../units/quantity.ts';
import { numberOrText, readBy } from './field.ts';

/** An amount of money with or without its currency. */
export const amount = () =>
  readBy<WrittenAmount>(
    'amount',
    (value) => {
      const written = readAmount(value);
      if (!written) return { wrong: 'is not an amount', fix: amountFix(value) };
      if (written.currency === undefined) return written;
      const exponent = exponentOf(written.currency);
      if (exponent === undefined)
        return {
          wrong: `has an unknown currency "${written.currency}"`,
          fix: suggest(written.currency, currencyCodes),
        };
      if (decimalsOf(written.decimal) > exponent)
        return {
          wrong: `has more decimals than ${written.currency} has (${exponent})`,
          fix: 'write what was paid',
        };
      return written;
    },
    { editor: numberOrText, description: 'like 12.50, or 12.50 EUR' },
  );

const SIGNS: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD' };

function amountFix(value: string): string {
  const sign = Object.keys(SIGNS).find((symbol) => value.includes(symbol));
  const word = /[A-Za-z]{3}/.exec(value)?.[0] ?? '';
  const code = sign ? SIGNS[sign] : currencyCodes.find((known) => known === word.toUpperCase());
  const digits = value.replace(/[^\d.,]/g, '');
  const plain = /,\d{1,2}$/.test(digits)
    ? digits.replaceAll('.', '').replace(',', '.')
    : digits.replaceAll(',', '');
  const fixed = code ? `${plain} ${code}` : plain;
  const rest = value.replace(sign ?? word, '').replace(/[\d.,\s−-]/g, '');
  if (rest !== '' || (word !== '' && !code) || !isAmount(fixed))
    return 'write digits with a decimal point, like 12.50';
  return /^[-−]/.test(value)
    ? `write "${fixed}" and set kind to sale, refund or deposit-back`
    : `write "${fixed}"`;
}

function isAmount(value: string): boolean {
  const written = readAmount(value);
  const decimals = decimalsOf(written?.decimal ?? '');
  return written !== undefined && decimals <= (exponentOf(written.currency ?? '') ?? decimals);
}

/** A currency code of ISO 4217. */
export const currency = () =>
  readBy<string>(
    'currency',
    (value) =>
      exponentOf(value) === undefined
        ? { wrong: 'is not a currency code', fix: suggest(value.toUpperCase(), currencyCodes) }
        : value,
    { editor: { enum: [...currencyCodes] } },
  );

/** One of several that share an amount: by weight (`floor:2`; `floor` alone weighs 1) or by a stated amount (`floor=20.00`). */
export interface Portion {
  readonly id: string;
  readonly weight?: string;
  readonly amount?: string;
}

/** One portion; the record it names is checked once everything is read. */
export const portion = (kind: string) =>
  readBy<Portion>(
    'portion',
    (value) => {
      const [, id, mark, digits = '1'] =
        /^([a-z0-9]+(?:-[a-z0-9]+)*)(?:([:=])(\d{1,12}(?:\.\d{1,6})?))?$/.exec(value) ?? [];
      if (id === undefined)
        return {
          wrong: 'is not a portion',
          fix: 'write id:weight like floor:2, or id=amount like floor=20.00',
        };
      return mark === '=' ? { id, amount: digits } : { id, weight: digits };
    },
    { ref: kind, editor: { type: 'string' } },
  );
