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
