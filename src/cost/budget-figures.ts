import type { Breakdown } from '../book/figure.ts';
import type { Project, View } from '../book/types.ts';
import { toldOf } from '../ledger/withheld.ts';
import { costCategories } from '../model/cost-rows.ts';
import { type Money, negate, sum, zero } from '../money/money.ts';
import type { Said } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import {
  type AmountFigure,
  type AmountKind,
  addRanges,
  type MoneyRange,
  sumAmounts,
} from './amount-row.ts';
import { type BudgetOnDay, budgetOn } from './budget-lines.ts';
import { categoryName } from './category-name.ts';
import type { CostRow } from './cost-row.ts';
import { type Forecast, forecastOf } from './forecast.ts';
import { type OrderOnDay, ordersOn } from './outstanding.ts';
import { type Overrun, overrunOf } from './overrun.ts';
import { type PartToBuy, stillToBuy } from './still-to-buy.ts';

/** One phase or category of the budget, or all of them together. */
export interface BudgetPosition {
  readonly key: string;
  readonly name: Said;
  readonly finished: boolean;
  /** Undefined where no line allows anything. */
  readonly budget: AmountFigure | undefined;
  readonly spent: AmountFigure;
  readonly ordered: AmountFigure;
  readonly toBuy: AmountFigure;
  readonly toBuyRange: MoneyRange;
  readonly forecast: Forecast;
  /** Forecast less budget: over when above zero; undefined without a budget. */
  readonly over: Money | undefined;
}

/** The contingency, and how much of it the forecast would take. */
export interface Contingency {
  readonly set: AmountFigure;
  /** What the forecast exceeds the budget lines by; zero when it doesn't. */
  readonly used: MoneyRange;
  /** What would be left of it; below zero when it does not reach. */
  readonly left: Money;
}

/** All figures of the budget page on a day. */
export interface BudgetFigures {
  readonly budget: BudgetOnDay;
  readonly positions: readonly BudgetPosition[];
  readonly total: Omit<BudgetPosition, 'forecast'> & { readonly forecast: MoneyRange };
  readonly contingency: Contingency | undefined;
  readonly overrun: Overrun | undefined;
  readonly orders: readonly OrderOnDay[];
  readonly toBuy: readonly PartToBuy[];
}

/** Whether a project has anything to show on a budget page. */
export function hasBudget({ budgets, orders }: Pick<Project, 'budgets' | 'orders'>): boolean {
  return budgets.length + orders.length > 0;
}

/** Budget, spent, ordered, still to buy and forecast on the day of a view. */
export function budgetFigures(view: View): BudgetFigures {
  const budget = budgetOn(view.project, view.day);
  const orders = ordersOn(view);
  const toBuy = stillToBuy(view, orders);
  const parts = { view, budget, orders, toBuy };
  const sums = groupsOf(parts).map((group) => sumsOf(parts, group));
  const overrun = budget.by === 'phase' ? overrunOf(sums.flatMap(finishedPhase)) : undefined;
  const positions = sums.filter(hasAnything).map((position) => withForecast(position, overrun));
  const total = totalOf(view, budget, positions);
  const contingency = contingencyOf(budget, total.forecast, view.project.currency);
  return { budget, positions, total, contingency, overrun, orders, toBuy };
}

interface Parts {
  readonly view: View;
  readonly budget: BudgetOnDay;
  readonly orders: readonly OrderOnDay[];
  readonly toBuy: readonly PartToBuy[];
}

interface Group {
  readonly key: string;
  readonly name: Said;
  readonly finished: boolean;
}

type Sums = Omit<BudgetPosition, 'forecast' | 'over'>;

/** Rows that no phase bears, withheld amounts and parts without a phase, stand in a group of their own. */
function groupsOf({ view, budget }: Parts): Group[] {
  const { finished, status } = view.project.info;
  const allDone = status === 'finished' && finished !== undefined && finished <= view.day;
  if (budget.by === 'category')
    return costCategories.map((key) => ({ key, name: categoryName(key), finished: allDone }));
  const phases = view.phases.map(({ phase, state }) => ({
    key: phase.id,
    name: phase.name,
    finished: allDone || state === 'finished',
  }));
  const name: Said = ({ money }) => money.budget.noPhase;
  return [...phases, { key: 'none', name, finished: allDone }];
}

function sumsOf({ view, budget, orders, toBuy }: Parts, group: Group): Sums {
  const { currency } = view.project;
  const { key } = group;
  const byPhase = budget.by === 'phase';
  const line = budget.lines.get(key);
  const spent = byPhase ? view.costsByPhase : view.costsByCategory;
  const open = orders.filter(
    ({ order, state }) => state === 'open' && (byPhase ? order.phase : order.category) === key,
  );
  const wanted = toBuy.filter(({ part }) => (byPhase ? (part.phase ?? 'none') : 'part') === key);
  return {
    ...group,
    budget: line && sumAmounts([line], currency, 'budgetLines'),
    spent: spentIn(spent, key, currency),
    ordered: sumAmounts(open.map(openRow), currency, 'orders'),
    toBuy: sumAmounts(wanted.flatMap(wantedRow), currency, 'estimates'),
    toBuyRange: addRanges(
      wanted.flatMap(({ price }) => price ?? []),
      currency,
    ),
  };
}

function spentIn(spent: Breakdown<Money, CostRow>, key: string, currency: string): AmountFigure {
  const figure = spent.groups.find((group) => group.key === key)?.figure;
  return figure ? amountsOf(figure) : sumAmounts([], currency, 'costRows');
}

function amountsOf({ value, rows, how }: Breakdown<Money, CostRow>['total']): AmountFigure {
  return {
    value,
    how,
    rows: rows.map((row) => ({
      ...row,
      title: (words: Words) => toldOf(row, words),
      amount: row.counted,
    })),
  };
}

function openRow({ order, counted, rate }: OrderOnDay) {
  const note: Said | undefined = rate && (({ money }) => money.sums.newestRate(rate));
  return { id: order.id, date: order.date, what: order.what, amount: counted, note };
}

function wantedRow({ part, since, price, from }: PartToBuy) {
  if (price === undefined) return [];
  const note: Said = ({ money: { sums } }) =>
    from === 'search' ? sums.newestPrice : sums.estimate;
  return [{ id: part.id, date: since, what: part.name, amount: price.middle, note }];
}

function finishedPhase({ key, name, finished, budget, spent }: Sums) {
  return finished && budget ? [{ id: key, name, budget: budget.value, spent: spent.value }] : [];
}

function hasAnything({ budget, spent, ordered, toBuy }: Sums): boolean {
  return budget !== undefined || [spent, ordered, toBuy].some(({ rows }) => rows.length > 0);
}

function withForecast(position: Sums, overrun: Overrun | undefined): BudgetPosition {
  const { spent, ordered, toBuyRange: toBuy, finished } = position;
  const budget = position.budget?.value;
  const forecast = forecastOf({
    ...{ spent: spent.value, ordered: ordered.value, toBuy, budget, finished, overrun },
  });
  return { ...position, forecast, over: budget && less(forecast.middle, budget) };
}

function totalOf(
  view: View,
  budget: BudgetOnDay,
  positions: readonly BudgetPosition[],
): BudgetFigures['total'] {
  const { currency } = view.project;
  const gather = (of: 'ordered' | 'toBuy', kind: AmountKind) =>
    sumAmounts(
      positions.flatMap((position) => position[of].rows),
      currency,
      kind,
    );
  const forecast = addRanges(
    positions.map((position) => position.forecast),
    currency,
  );
  const lines = budget.lines.size > 0 ? budget.total : undefined;
  return {
    ...{ key: 'all', name: ({ money }: Words) => money.budget.inAll },
    finished: positions.every(({ finished }) => finished),
    budget: lines,
    spent: amountsOf(view.costsByCategory.total),
    ordered: gather('ordered', 'openOrders'),
    toBuy: gather('toBuy', 'estimates'),
    toBuyRange: addRanges(
      positions.map(({ toBuyRange }) => toBuyRange),
      currency,
    ),
    forecast,
    over: lines && less(forecast.middle, lines.value),
  };
}

function contingencyOf(
  { contingency, total, lines }: BudgetOnDay,
  forecast: MoneyRange,
  currency: string,
): Contingency | undefined {
  if (contingency === undefined || lines.size === 0) return undefined;
  const beyond = (end: Money) => {
    const over = less(end, total.value);
    return over.minor > 0 ? over : zero(currency);
  };
  const used = {
    low: beyond(forecast.low),
    middle: beyond(forecast.middle),
    high: beyond(forecast.high),
  };
  const set = sumAmounts([contingency], currency, 'budgetLines');
  return { set, used, left: less(set.value, used.middle) };
}

function less(from: Money, amount: Money): Money {
  return sum([from, negate(amount)], from.currency);
}
