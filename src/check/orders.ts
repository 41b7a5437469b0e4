import { correctionsOf, firstIds } from '../ledger/corrections.ts';
import type { CostRecord, Order } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { currencyOf } from './money.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** What pays an order is in its currency, is published, and does not come before it. */
export const paymentsFitTheirOrders: Rule = ({ project }) => {
  const firstId = firstIds(correctionsOf(project.lists));
  const own = currencyOf(project);
  const orders = new Map(
    standingRows(project, 'orders').map(({ value }) => [firstId(value.id), value]),
  );
  return standingRows(project, 'costs').flatMap(({ raw, value }) => {
    const order = value.order === undefined ? undefined : orders.get(firstId(value.order));
    if (order === undefined) return [];
    return [
      ...currencies(raw, value, order, own),
      ...withheld(raw, value),
      ...tooEarly(raw, value, order),
    ];
  });
};

function currencies(
  raw: RawRecord,
  { amount }: CostRecord,
  order: Order,
  own: string | undefined,
): Problem[] {
  const [paid, ordered] = [amount.currency ?? own, order.amount.currency ?? own];
  if (paid === undefined || ordered === undefined || paid === ordered) return [];
  return [
    problemAt(
      raw.placeOf(['amount']),
      'order/currency',
      `amount: "${amount.decimal} ${paid}" pays the order "${order.id}", which is in ${ordered}`,
      `write in both what was agreed and paid in one currency, or leave "order" out here and fill in "closed" there`,
    ),
  ];
}

// What is left of the order would give the amount away.
function withheld(raw: RawRecord, { order, withhold }: CostRecord): Problem[] {
  if (!withhold?.includes('amount')) return [];
  return [
    problemAt(
      raw.placeOf(['order']),
      'order/withheld',
      `order: "${order}" would show the amount that this row withholds`,
      'leave "order" out, and fill in "closed" in the order',
    ),
  ];
}

function tooEarly(raw: RawRecord, { date }: CostRecord, order: Order): Problem[] {
  if (date >= order.date) return [];
  const problem = problemAt(
    raw.placeOf(['date']),
    'order/paid-before',
    `date: "${date}" is before the order that it pays, "${order.id}" (${order.date})`,
    'correct the wrong one, if one is',
  );
  return [{ ...problem, level: 'warning' }];
}
