import { findRow, ownId, readingId } from '../ledger/find-row.ts';
import { toldOf } from '../ledger/withheld.ts';
import type { Part } from '../model/kinds.ts';
import { showMoney, toMinor, type WrittenAmount } from '../money/money.ts';
import { describeDecision } from '../parts/decision-lines.ts';
import { showDuration } from '../time/duration.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { Project } from './types.ts';

/** What a row of any kind says, in one line of words and figures; rows that were replaced too. Undefined for an id that no row has. */
export function rowLine(project: Project, id: string, language: string): string | undefined {
  const words = wordsOf(language);
  const { rows } = words.log;
  const amountOf = (amount: WrittenAmount) => {
    const currency = amount.currency ?? project.currency;
    const money = toMinor(amount.decimal, currency);
    return money ? showMoney(money, language) : amount.decimal;
  };
  const nameOf = (
    records: readonly { readonly id: string; readonly name: string }[],
    key: string,
  ) => findRow(records, key)?.name ?? key;

  // The last of the rows that one was converted into, when a rate was corrected.
  const cost = findRow(project.costs, id) && project.costs.findLast((row) => row.id === id);
  if (cost) return `${showMoney(cost.counted, language)}, ${toldOf(cost, words)}`;

  const hours = findRow(project.hours, id);
  if (hours) return `${showDuration(hours.hours)} h, ${hours.what}`;

  const reading = findRow(project.readings, id, readingId)?.reading;
  if (reading) {
    const values = reading.values.map(({ value, decimals }) => value.toFixed(decimals)).join(', ');
    return `${nameOf(project.specs, reading.spec)}: ${values} ${reading.unit}`;
  }
  const order = findRow(project.orders, id, ownId);
  if (order) return `${amountOf(order.amount)}, ${order.what}`;

  const line = findRow(project.budgets, id);
  if (line) {
    const purpose = line.phase ?? (line.category && words.money.categories[line.category]);
    return rows.amountFor(amountOf(line.amount), purpose ?? rows.contingency);
  }

  const rate = findRow(project.rates, id);
  if (rate) return `1 ${rate.from} = ${rate.rate} ${rate.to}, ${rate.source}`;

  const search = findRow(project.searches, id);
  if (search)
    return `${nameOf(project.parts, search.part)}: ${words.parts.hunts.results[search.result]}`;

  const decision = describeDecision(project, id, words);
  if (decision) return decision.what;
  const wait = findRow(project.waits, id);
  if (wait) return rows.waits(nameOf(project.phases, wait.phase), wait.what);
  const preparation = findRow(project.preparations, id, ownId);
  if (preparation)
    return `${words.parts.preparations.kinds[preparation.kind]}, ${preparation.what}`;

  const part = findRow(project.partRows, id, ownId);
  return part && partLine(part, nameOf(project.sources, part.source), rows);
}

function partLine(part: Part, source: string, words: Words['log']['rows']): string {
  const steps = ['wanted', 'ordered', 'got', 'fitted', 'scrapped', 'sold'] as const;
  const dated = steps.flatMap((step) => (part[step] ? [words.steps[step](part[step])] : []));
  return [part.name, source, ...dated].join(', ');
}
