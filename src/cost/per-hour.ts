import type { Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import type { WorkedRow } from '../hours/hours.ts';
import type { Money } from '../money/money.ts';
import { divideHalfAwayFromZero } from '../money/round.ts';
import type { Minutes } from '../time/duration.ts';
import type { Said } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import type { CostRow } from './cost-row.ts';

/** Money and hours of one phase or of all, and what was spent for each hour worked. */
export interface PerHour {
  readonly key: string;
  readonly name: Said;
  readonly costs: Figure<Money, CostRow>;
  readonly hours: Figure<Minutes, WorkedRow>;
  /** Rounded half away from zero to whole minor units; none without hours. */
  readonly perHour: Money | undefined;
}

/** Money per hour worked in each phase that has either, then in all. */
export function perHour({ costsByPhase, hoursByPhase }: View): {
  readonly phases: readonly PerHour[];
  readonly all: PerHour;
} {
  const costs = new Map(costsByPhase.groups.map((group) => [group.key, group]));
  const hours = new Map(hoursByPhase.groups.map((group) => [group.key, group]));
  const { currency } = costsByPhase.total.value;
  const nothing = { rows: [], how: ({ money }: Words) => money.sums.noRows };

  const keys = new Set([...hours.keys(), ...costs.keys()]);
  const phases = [...keys].map((key) =>
    divide(
      key,
      hours.get(key)?.name ?? costs.get(key)?.name ?? key,
      costs.get(key)?.figure ?? { ...nothing, value: { minor: 0, currency } },
      hours.get(key)?.figure ?? { ...nothing, value: 0 },
    ),
  );
  return {
    phases,
    all: divide(
      'all',
      ({ money }) => money.costs.perHour.all,
      costsByPhase.total,
      hoursByPhase.total,
    ),
  };
}

function divide(
  key: string,
  name: Said,
  costs: PerHour['costs'],
  hours: PerHour['hours'],
): PerHour {
  if (hours.value === 0) return { key, name, costs, hours, perHour: undefined };
  const { minor, currency } = costs.value;
  const each = divideHalfAwayFromZero(BigInt(minor) * 60n, BigInt(hours.value));
  return { key, name, costs, hours, perHour: { minor: Number(each), currency } };
}
