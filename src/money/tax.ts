import { wholeWeights } from './allocate.ts';
import { type Money, sum } from './money.ts';
import { divideHalfAwayFromZero } from './round.ts';

/** An amount with its tax told apart. */
export interface Taxed {
  readonly withTax: Money;
  readonly tax: Money;
}

/**
 * The tax of an amount at a rate in per cent (decimal text), worked out row by row and rounded half away from zero to whole minor
 * units. Inside: `amount · r / (100 + r)`; outside: `amount · r / 100`, which comes on top.
 */
export function taxOf(amount: Money, rate: string, side: 'inside' | 'outside'): Taxed {
  const [r = 0n, hundred = 100n] = wholeWeights([rate, '100']);
  const base = side === 'inside' ? hundred + r : hundred;
  const minor = Number(divideHalfAwayFromZero(BigInt(amount.minor) * r, base));
  const tax = { minor, currency: amount.currency };
  return { tax, withTax: side === 'inside' ? amount : sum([amount, tax], amount.currency) };
}
