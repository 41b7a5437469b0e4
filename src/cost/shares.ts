import type { Portion } from '../model/money-fields.ts';
import { allocate, wholeWeights } from '../money/allocate.ts';
import type { Money } from '../money/money.ts';

/** What one of several bears of an amount. */
export interface Share {
  readonly id: string;
  readonly money: Money;
}

/**
 * Shares an amount as its row says: by weights, or in proportion to stated amounts, which in one currency are then the shares
 * themselves. By largest remainder, so that the shares add up. None without portions, or when all weigh nothing.
 */
export function sharesOf(portions: readonly Portion[], total: Money): readonly Share[] {
  const weights = wholeWeights(portions.map(({ weight, amount }) => amount ?? weight ?? '0'));
  if (weights.every((weight) => weight === 0n)) return [];
  const shares = allocate(total, weights);
  return portions.map(({ id }, index) => ({ id, money: shares[index] as Money }));
}
