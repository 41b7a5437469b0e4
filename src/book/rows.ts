import { describeDecision } from '../parts/decision-lines.ts';
import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';
import type { Project } from './types.ts';

/** What any row of the ledger is, in a few words; undefined for an id that no row has. */
export function describeRow(
  project: Project,
  id: string,
  words: Words,
): { readonly date: Day | undefined; readonly what: string } | undefined {
  const { rows } = words.log;
  const dated = [...project.hours, ...project.costs].find((row) => row.id === id);
  if (dated) return dated;

  const reading = project.readings.find((item) => item.reading.id === id)?.reading;
  if (reading)
    return {
      date: reading.date,
      what: rows.reading(
        project.specs.find((spec) => spec.id === reading.spec)?.name ?? reading.spec,
      ),
    };

  const part = project.parts.find((item) => item.id === id);
  if (part) return { date: undefined, what: part.name };

  const search = project.searches.find((item) => item.id === id);
  if (search)
    return {
      date: search.date,
      what: rows.search(project.parts.find((item) => item.id === search.part)?.name ?? search.part),
    };

  const preparation = project.preparations.find((item) => item.rowId === id);
  if (preparation) return { date: preparation.date, what: preparation.what };

  const order = project.orders.find((item) => item.rowId === id);
  if (order) return { date: order.date, what: order.what };

  const line = project.budgets.find((item) => item.id === id);
  if (line) {
    const purpose = line.phase ?? (line.category && words.money.categories[line.category]);
    return { date: line.date, what: rows.budget(purpose ?? rows.contingency) };
  }

  const decision = describeDecision(project, id, words);
  if (decision) return decision;
  const wait = project.waits.find((item) => item.id === id);
  if (wait) return { date: wait.date, what: rows.wait(wait.what) };

  const rate = project.rates.find((item) => item.id === id);
  return rate && { date: rate.date, what: `1 ${rate.from} = ${rate.rate} ${rate.to}` };
}
