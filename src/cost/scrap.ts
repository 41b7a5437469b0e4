import { type Money, negate, sum } from '../money/money.ts';
import { divideHalfAwayFromZero } from '../money/round.ts';
import { convertUnit, kindOf } from '../units/unit.ts';
import type { CostRow } from './cost-row.ts';

/** Scrap that was weighed, and what a kilogram fetched, rounded half away from zero to whole minor units. */
export interface WeighedScrap {
  readonly kilograms: number;
  readonly perKilogram: Money;
  readonly rows: readonly CostRow[];
}

/** Weight and price of scrap; rows without a weight don't count in either, and without any there is nothing to say. */
export function weighScrap(rows: readonly CostRow[]): WeighedScrap | undefined {
  const weighed = rows.filter(({ mass }) => mass !== undefined && kindOf(mass.unit) === 'mass');
  const grams = weighed.reduce((total, { mass }) => total + gramsOf(mass), 0n);
  const currency = weighed[0]?.counted.currency;
  if (grams === 0n || currency === undefined) return undefined;

  const taken = negate(
    sum(
      weighed.map(({ counted }) => counted),
      currency,
    ),
  );
  const minor = Number(divideHalfAwayFromZero(BigInt(taken.minor) * 1000n, grams));
  return { kilograms: Number(grams) / 1000, perKilogram: { minor, currency }, rows: weighed };
}

function gramsOf(mass: CostRow['mass']): bigint {
  return mass ? BigInt(Math.round(convertUnit(mass.value, mass.unit, 'kg') * 1000)) : 0n;
}
