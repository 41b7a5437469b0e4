import { projectOf, type Written } from '../book/project-of.ts';
import { cost, line, order, part, phases, sources } from '../cost/budget-project.ts';

// As small as shows every line of the curve: two phases finished, one to come, a line that was changed, a sale,
// an order still owed and a part still wanted.

const costs: readonly Written[] = [
  cost('c-1', '2025-03-02', '110.00', 'strip'),
  cost('c-2', '2025-04-03', '320.00', 'floor'),
  cost('c-3', '2025-04-18', '60.00', 'floor', { kind: 'sale' }),
  cost('c-4', '2025-05-02', '40.00', 'paint', { kind: 'deposit', order: 'o-1' }),
];

/** The project of the golden drawing of a budget. */
export const budgetedPress = projectOf({
  lists: {
    phases,
    sources,
    costs,
    budgets: [
      line('b-1', '2025-02-20', '100.00', 'strip'),
      line('b-2', '2025-02-20', '200.00', 'floor'),
      line('b-3', '2025-02-20', '300.00', 'paint'),
      line('b-4', '2025-04-04', '300.00', 'floor', { because: 'One sheet more' }),
    ],
    orders: [order('o-1', '2025-05-02', '120.00')],
    parts: [
      part('trim', { estimate: '90.00', 'estimate-low': '60.00', 'estimate-high': '300.00' }),
    ],
  },
});
