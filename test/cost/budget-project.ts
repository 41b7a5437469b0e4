import { type BudgetFigures, budgetFigures } from '../../src/cost/budget-figures.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

// Three phases of a small rebuild, with as much money as it takes to work every figure by hand.

const phase = (id: string, month: string, rest: Written = {}): Written => ({
  ...{ id, name: id, summary: 'Work.', 'planned-hours': '10:00' },
  ...{ 'planned-start': `2025-${month}-01`, 'planned-finish': `2025-${month}-11` },
  ...rest,
});

export const phases = [
  phase('strip', '03', { finished: '2025-03-12' }),
  phase('floor', '04', { finished: '2025-04-20' }),
  phase('paint', '06'),
];

export const sources = [{ id: 'new', kind: 'new', name: 'Bought new' }];

export const line = (
  id: string,
  date: string,
  amount: string,
  phaseId: string,
  rest: Written = {},
): Written => ({ id, date, amount, phase: phaseId, ...rest });

export const cost = (
  id: string,
  date: string,
  amount: string,
  phaseId: string,
  rest: Written = {},
): Written => ({ id, date, amount, category: 'part', phase: phaseId, what: 'A thing', ...rest });

export const order = (id: string, date: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date, amount, category: 'part', phase: 'paint', what: 'Something' },
  ...rest,
});

export const part = (id: string, rest: Written = {}): Written => ({
  ...{ id, name: id, system: 'body', source: 'new', phase: 'paint', wanted: '2025-03-01' },
  ...rest,
});

/** The budget of a project with these lists, on a day. */
export function figuresOn(
  lists: Readonly<Record<string, readonly Written[]>>,
  day: string,
  project: Written = {},
): BudgetFigures {
  const made = projectOf({ project, lists: { phases, sources, ...lists } });
  return budgetFigures(made.asOf(day as Day));
}
