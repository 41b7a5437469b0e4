import type { View } from '../book/types.ts';
import { type Money, sum, zero } from '../money/money.ts';
import { addDays, type Day, daysBetween, earliestDay, latestDay } from '../time/day.ts';
import type { AmountRow, MoneyRange } from './amount-row.ts';
import type { BudgetFigures } from './budget-figures.ts';
import { scaled } from './overrun.ts';

/** An amount at the end of a day. */
export interface DayAmount {
  readonly day: Day;
  readonly money: Money;
}

/** Budget, planned spending and spending over time, and where it may end. */
export interface BudgetCurve {
  readonly from: Day;
  readonly today: Day;
  /** Where the forecast ends: the last planned finish, or a little after today once that has passed. */
  readonly end: Day;
  readonly endIsPlanned: boolean;
  /** Sum of the lines in force, without the contingency, at each day that it changed. */
  readonly budget: readonly DayAmount[];
  /** What would be spent if each phase spent its line evenly between its planned days; empty when lines are by category. */
  readonly planned: readonly DayAmount[];
  /** Spent so far, credits taken off, at each day that it changed. */
  readonly spent: readonly DayAmount[];
  /** Undefined when all work is finished and nothing is owed or wanted. */
  readonly forecast: MoneyRange | undefined;
}

/** The curves of the budget as of the day of a view. */
export function budgetCurve(view: View, figures: BudgetFigures): BudgetCurve {
  const { project, day } = view;
  const { total } = figures;
  const finish = latestDay(project.phases.map(({ plannedFinish }) => plannedFinish));
  const endIsPlanned = finish !== undefined && finish > day;
  const beyond = Math.max(14, Math.round(daysBetween(project.firstDay, day) * 0.08));
  const planned = plannedSteps(spendingOf(view, figures), project.currency);
  const settled = total.finished && total.forecast.high.minor === total.spent.value.minor;
  return {
    from: earliestDay([project.firstDay, planned[0]?.day]) ?? day,
    today: day,
    endIsPlanned,
    end: endIsPlanned ? finish : addDays(day, beyond),
    budget: budgetSteps(figures, project.currency),
    planned,
    spent: runningSum(total.spent.rows, project.currency),
    forecast: settled ? undefined : total.forecast,
  };
}

/** The newest of some amounts on or before a day; zero before the first. */
export function amountOn(amounts: readonly DayAmount[], day: Day, currency: string): Money {
  return amounts.findLast((amount) => amount.day <= day)?.money ?? zero(currency);
}

function budgetSteps({ budget }: BudgetFigures, currency: string): DayAmount[] {
  const changes = budget.changes.filter((change) => change.for.kind !== 'contingency');
  return runningSum(
    changes.map(({ line, change }) => ({ date: line.date, amount: change })),
    currency,
  );
}

function runningSum(
  rows: readonly Pick<AmountRow, 'date' | 'amount'>[],
  currency: string,
): DayAmount[] {
  const sums: DayAmount[] = [];
  for (const { date, amount } of rows) {
    const last = sums.at(-1);
    if (last?.day === date) sums.pop();
    sums.push({ day: date, money: sum([last?.money ?? zero(currency), amount], currency) });
  }
  return sums;
}

function plannedSteps(phases: readonly PlannedSpending[], currency: string): DayAmount[] {
  const days = [...new Set(phases.flatMap(({ start, finish }) => [start, finish]))].sort();
  return days.map((day) => ({ day, money: plannedOn(phases, day, currency) }));
}

interface PlannedSpending {
  readonly start: Day;
  readonly finish: Day;
  readonly amount: Money;
}

function plannedBy({ start, finish, amount }: PlannedSpending, day: Day): Money {
  if (day >= finish) return amount;
  if (day <= start) return zero(amount.currency);
  const dividend = BigInt(daysBetween(start, day));
  return scaled(amount, { dividend, divisor: BigInt(daysBetween(start, finish)) });
}

function plannedOn(phases: readonly PlannedSpending[], day: Day, currency: string): Money {
  return sum(
    phases.map((phase) => plannedBy(phase, day)),
    currency,
  );
}

function spendingOf({ project }: View, { budget }: BudgetFigures): PlannedSpending[] {
  return project.phases.flatMap(({ id, plannedStart: start, plannedFinish: finish }) => {
    const line = budget.lines.get(id);
    return line ? [{ start, finish, amount: line.amount }] : [];
  });
}

/** What the curves come to at the end of a month, or today. */
export interface MonthEnd {
  readonly day: Day;
  readonly budget: Money;
  /** Undefined where there is no plan by phase. */
  readonly planned: Money | undefined;
  /** Undefined for days still to come. */
  readonly spent: Money | undefined;
}

/** The numbers of the curves for a table: at the end of each month, today, and at the end of the plan when that is still to come. */
export function monthEnds(curve: BudgetCurve, view: View, figures: BudgetFigures): MonthEnd[] {
  const { currency } = view.project;
  const phases = spendingOf(view, figures);
  const plannedEnd = curve.endIsPlanned ? curve.end : curve.today;
  const days = new Set([...monthEndsBetween(curve.from, plannedEnd), curve.today]);
  return [...days].sort().map((day) => ({
    day,
    budget: amountOn(curve.budget, day, currency),
    planned: phases.length > 0 ? plannedOn(phases, day, currency) : undefined,
    spent: day <= curve.today ? amountOn(curve.spent, day, currency) : undefined,
  }));
}

function monthEndsBetween(from: Day, last: Day): Day[] {
  const ends: Day[] = [];
  for (let day = monthEnd(from); day < last; day = monthEnd(addDays(day, 1))) ends.push(day);
  return [...ends, last];
}

function monthEnd(day: Day): Day {
  const next = addDays(`${day.slice(0, 7)}-01` as Day, 32);
  return addDays(`${next.slice(0, 7)}-01` as Day, -1);
}
