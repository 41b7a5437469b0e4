import { exponentOf } from '../money/currency.ts';
import type { Money } from '../money/money.ts';

/** An amount on a scale, without pence or cents. */
export function showWhole(amount: Money, language: string): string {
  const exponent = exponentOf(amount.currency) ?? 0;
  const format = new Intl.NumberFormat(language, {
    style: 'currency',
    currency: amount.currency,
    minimumFractionDigits: 0,
    maximumFractionDigits: 0,
  });
  return format.format(Math.round(amount.minor / 10 ** exponent)).replace('-', '−');
}
