import { findRow, ownId, readingId } from '../ledger/find-row.ts';
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
  const dated = findRow(project.hours, id) ?? findRow(project.costs, id);
  if (dated) return dated;

  const reading = findRow(project.readings, id, readingId)?.reading;
  if (reading)
    return {
      date: reading.date,
      what: rows.reading(findRow(project.specs, reading.spec)?.name ?? reading.spec),
    };

  const part = findRow(project.parts, id);
  if (part) return { date: undefined, what: part.name };

  const search = findRow(project.searches, id);
  if (search)
    return {
      date: search.date,
      what: rows.search(findRow(project.parts, search.part)?.name ?? search.part),
    };

  const preparation = findRow(project.preparations, id, ownId);
  if (preparation) return { date: preparation.date, what: preparation.what };

  const order = findRow(project.orders, id, ownId);
  if (order) return { date: order.date, what: order.what };

  const line = findRow(project.budgets, id);
  if (line) {
    const purpose = line.phase ?? (line.category && words.money.categories[line.category]);
    return { date: line.date, what: rows.budget(purpose ?? rows.contingency) };
  }

  const decision = describeDecision(project, id, words);
  if (decision) return decision;
  const wait = findRow(project.waits, id);
  if (wait) return { date: wait.date, what: rows.wait(wait.what) };

  const rate = findRow(project.rates, id);
  return rate && { date: rate.date, what: `1 ${rate.from} = ${rate.rate} ${rate.to}` };
}
