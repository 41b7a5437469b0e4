import type { Part } from '../model/kinds.ts';
import { allocate } from '../money/allocate.ts';
import type { Money } from '../money/money.ts';
import { stated } from './stated.ts';

/** What a part bears of the net cost of the machine that it came from. */
export interface DonorShare {
  readonly part: Part;
  readonly value: Money;
  readonly money: Money;
}

/**
 * Shares the net cost of a machine over the parts taken from it, by their stated values: the relative sales value at split-off
 * of joint costing. What was sold has come off the net before, as a by-product does. No shares when no part has a value.
 */
export function shareNet(
  parts: readonly Part[],
  net: Money,
): { readonly shares: readonly DonorShare[]; readonly withoutValue: readonly Part[] } {
  const valued = parts.map((part) => ({ part, value: stated(part.value, net.currency) }));
  const bearing = valued.filter(hasValue);
  const withoutValue = valued.filter((item) => !hasValue(item)).map(({ part }) => part);
  if (bearing.length === 0) return { shares: [], withoutValue };
  const money = allocate(
    net,
    bearing.map(({ value }) => BigInt(value.minor)),
  );
  const shares = bearing.map((item, index) => ({ ...item, money: money[index] as Money }));
  return { shares, withoutValue };
}

function hasValue(item: {
  readonly part: Part;
  readonly value: Money | undefined;
}): item is { readonly part: Part; readonly value: Money } {
  return item.value !== undefined && item.value.minor > 0;
}
