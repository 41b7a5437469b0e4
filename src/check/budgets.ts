import type { BudgetLine } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** A budget line is for one thing, the lines of a project divide the money one way, and a change says why. */
export const budgetsFit: Rule = ({ project }) => {
  const seen = new Set<string>();
  let division: 'phase' | 'category' | undefined;
  const rows = [...standingRows(project, 'budgets')].sort((a, b) =>
    a.value.date < b.value.date ? -1 : 1,
  );
  return rows.flatMap(({ raw, value }): Problem[] => {
    const wrong = (field: string, code: string, message: string, fix: string) => [
      problemAt(raw.placeOf([field]), `budget/${code}`, message, fix),
    ];
    const kinds = purposes(value);
    const [purpose] = kinds;
    if (purpose === undefined)
      return wrong(
        'id',
        'for-nothing',
        `the line "${value.id}" is for nothing`,
        'fill in "phase" or "category", or contingency: true',
      );
    if (kinds.length > 1)
      return wrong(
        'id',
        'for-two',
        `the line "${value.id}" is for ${kinds.join(' and ')}`,
        'keep one, and write a line for the other',
      );

    if (purpose !== 'contingency') {
      division ??= purpose;
      if (purpose !== division)
        return wrong(
          purpose,
          'two-ways',
          `${purpose}: other lines of this project are by ${division}`,
          `give it a ${division} instead`,
        );
    }
    const key = value.phase ?? value.category ?? purpose;
    // With its purpose, since a phase may be called "contingency".
    const change = seen.has(`${purpose} ${key}`);
    seen.add(`${purpose} ${key}`);
    return change && value.because === undefined
      ? wrong(
          'id',
          'no-because',
          `the line "${value.id}" changes the budget for "${key}" without "because"`,
          'fill in "because": why it changed',
        )
      : [];
  });
};

function purposes({
  phase,
  category,
  contingency,
}: BudgetLine): ('phase' | 'category' | 'contingency')[] {
  return [
    ...(phase === undefined ? [] : (['phase'] as const)),
    ...(category === undefined ? [] : (['category'] as const)),
    ...(contingency ? (['contingency'] as const) : []),
  ];
}
