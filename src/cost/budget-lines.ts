import type { Project } from '../book/types.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { BudgetLine } from '../model/kinds.ts';
import { type Money, negate, sum } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import { type Said, say } from '../words/said.ts';
import { type AmountFigure, type AmountRow, sumAmounts } from './amount-row.ts';
import { categoryName } from './category-name.ts';
import type { StandingRate } from './cost-row.ts';
import { inOwnCurrency, moneyOf } from './own-currency.ts';

/** What a budget line is for; the contingency is for nothing in particular. */
export interface BudgetFor {
  readonly kind: 'phase' | 'category' | 'contingency';
  readonly id: string;
}

/** One line of the budget beside the line that it took the place of. */
export interface BudgetChange {
  readonly line: BudgetLine & Standing;
  readonly for: BudgetFor;
  readonly amount: Money;
  /** What the line before it allowed; undefined where there was none. */
  readonly before: Money | undefined;
  /** More than before (or less, when negative); all of it where there was no line. */
  readonly change: Money;
  readonly rate: StandingRate | undefined;
}

/** The budget as it stood on a day. */
export interface BudgetOnDay {
  /** Which way the lines divide the money. */
  readonly by: 'phase' | 'category';
  /** The amount in force for each phase or category that has one. */
  readonly lines: ReadonlyMap<string, AmountRow>;
  readonly contingency: AmountRow | undefined;
  /** Sum of the lines, without the contingency. */
  readonly total: AmountFigure;
  /** Every line up to the day, in order of date: the first for a thing sets it, each later one changes it. */
  readonly changes: readonly BudgetChange[];
}

type Budgeted = Pick<Project, 'currency' | 'rates' | 'budgets'>;

/** The budget on a day: for each phase or category, and for the contingency, its newest line. */
export function budgetOn(project: Budgeted, day: Day): BudgetOnDay {
  const changes = changesUpTo(project, day);
  const newest = new Map(changes.map((change) => [keyOf(change.for), change]));
  const rows = [...newest.values()].map((change) => ({ for: change.for, row: rowOf(change) }));
  const lines = rows.filter((item) => item.for.kind !== 'contingency');
  return {
    by: lines.some((item) => item.for.kind === 'category') ? 'category' : 'phase',
    lines: new Map(lines.map((item) => [item.for.id, item.row])),
    contingency: rows.find((item) => item.for.kind === 'contingency')?.row,
    total: sumAmounts(
      lines.map(({ row }) => row),
      project.currency,
      'budgetLines',
    ),
    changes,
  };
}

/** What a budget line is for. */
export function purposeOf({ phase, category }: BudgetLine): BudgetFor {
  if (phase !== undefined) return { kind: 'phase', id: phase };
  if (category !== undefined) return { kind: 'category', id: category };
  return { kind: 'contingency', id: 'contingency' };
}

function changesUpTo(project: Budgeted, day: Day): BudgetChange[] {
  const before = new Map<string, Money>();
  return project.budgets
    .filter((line) => standsOn(line, day))
    .flatMap((line) => {
      const written = moneyOf(line.amount, project);
      const own = written && inOwnCurrency(project, written, { at: line.date, day });
      if (own === undefined) return [];
      const purpose = purposeOf(line);
      const earlier = before.get(keyOf(purpose));
      before.set(keyOf(purpose), own.money);
      return [
        {
          ...{ line, for: purpose, amount: own.money, before: earlier, rate: own.rate },
          change: sum([own.money, ...(earlier ? [negate(earlier)] : [])], project.currency),
        },
      ];
    });
}

// A phase may be called "contingency" too.
function keyOf({ kind, id }: BudgetFor): string {
  return `${kind} ${id}`;
}

function rowOf({ line, for: purpose, amount, rate }: BudgetChange): AmountRow {
  const { id, date } = line;
  const written = `${line.amount.decimal} ${line.amount.currency}`;
  return {
    ...{ id, date, what: purpose.id, amount },
    title: (words) => words.log.rows.budget(say(purposeName(purpose), words)),
    note: rate && (({ money }) => money.atRate(written, rate.rate)),
  };
}

/** What a budget line is for, as a reader is told; a phase that has no name among those given is called by its id. */
export function purposeName({ kind, id }: BudgetFor, names?: ReadonlyMap<string, string>): Said {
  if (kind === 'contingency') return ({ log }) => log.rows.contingency;
  return kind === 'category' ? categoryName(id) : (names?.get(id) ?? id);
}
