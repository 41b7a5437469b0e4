import type { Project, View } from '../book/types.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { Order } from '../model/kinds.ts';
import { type Money, negate, sum, zero } from '../money/money.ts';
import { type CostRow, countsAs } from './cost-row.ts';
import { inOwnCurrency, moneyOf } from './own-currency.ts';

/** An order and what is still owed on it on a day. */
export interface OrderOnDay {
  readonly order: Order & Standing;
  readonly amount: Money;
  /** Payments and deposits that name it, credits taken off; in the order's currency. */
  readonly paid: Money;
  readonly payments: readonly CostRow[];
  /** Still owed, in the order's currency; never below zero. */
  readonly open: Money;
  /** Paid beyond what was ordered for, in the order's currency; never below zero. */
  readonly overPaid: Money;
  readonly state: 'open' | 'paid' | 'closed';
  /** What `open` counts for in the project's currency, by its rule for shop tools. */
  readonly counted: Money;
  /** The newest recorded rate, where the order is in another currency: what is paid in the end may differ. */
  readonly rate: string | undefined;
}

/** Every order placed by the day of the view, in order of date. */
export function ordersOn(view: Pick<View, 'project' | 'day' | 'costs'>): readonly OrderOnDay[] {
  const { project, day } = view;
  const payments = Map.groupBy(view.costs, ({ order }) => order);
  return project.orders
    .filter((order) => standsOn(order, day))
    .flatMap((order) => {
      const amount = moneyOf(order.amount, project);
      return amount ? [orderOn(view, order, amount, payments.get(order.id) ?? [])] : [];
    });
}

function orderOn(
  { project, day }: Pick<View, 'project' | 'day'>,
  order: Order & Standing,
  amount: Money,
  named: readonly CostRow[],
): OrderOnDay {
  // A payment in another currency is a problem that the check has said.
  const payments = named.filter((row) => row.paid.currency === amount.currency);
  const paid = sum(
    payments.map((row) => row.paid),
    amount.currency,
  );
  const state = stateOf(order, amount, payments, day);
  const owed = sum([amount, negate(paid)], amount.currency);
  const open = state === 'open' ? owed : zero(amount.currency);
  const own = inOwnCurrency(project, open, { at: day, day });
  return {
    ...{ order, amount, paid, payments, open, state },
    overPaid: owed.minor < 0 ? negate(owed) : zero(amount.currency),
    counted: own ? countsAs(order.category, own.money, project.info.rules) : zero(project.currency),
    rate: own?.rate?.rate,
  };
}

/** An order that was paid whole once stays paid: what is given back later is not owed again. */
function stateOf(
  { closed }: Order,
  amount: Money,
  payments: readonly CostRow[],
  day: Project['lastDay'],
): OrderOnDay['state'] {
  let paid = 0;
  for (const row of payments) {
    paid += row.paid.minor;
    if (paid >= amount.minor) return 'paid';
  }
  if (closed !== undefined && closed <= day) return 'closed';
  return amount.minor === 0 ? 'paid' : 'open';
}
