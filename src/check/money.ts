import { camelName } from '../model/camel.ts';
import { exponentOf } from '../money/currency.ts';
import { toMinor, type WrittenAmount } from '../money/money.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';
import { replacedIds, standingRows } from './standing-rows.ts';

/** The currency of a project's totals: its own, or that of its earliest cost row that names one. */
export function currencyOf(project: ReadProject): string | undefined {
  if (project.info?.value.currency !== undefined) return project.info.value.currency;
  const named = project.lists.costs
    .map(({ value }) => value)
    .filter(({ amount }) => amount.currency !== undefined);
  // By id within a day, so that it does not depend on the order of rows or files.
  const order = (row: (typeof named)[number]) => `${row.date} ${row.id}`;
  return named.sort((a, b) => (order(a) < order(b) ? -1 : 1))[0]?.amount.currency;
}

/** Fields that hold money, by kind. Rows with a date may be in any currency that has a rate by then. */
const AMOUNTS = {
  costs: ['amount'],
  orders: ['amount'],
  budgets: ['amount'],
  searches: ['price'],
  parts: ['value', 'new-price', 'estimate', 'estimate-low', 'estimate-high', 'asking'],
} as const;

/** Kinds whose amounts are counted together, so that another currency needs a rate. */
const COUNTED: ReadonlySet<string> = new Set(['costs', 'orders', 'budgets']);

/** Every amount has a currency with enough decimals, and a rate into the project's currency on or before its day. */
export const amountsHaveCurrency: Rule = ({ project }) => {
  if (project.info === undefined) return [];
  return (Object.keys(AMOUNTS) as (keyof typeof AMOUNTS)[]).flatMap((kind) =>
    project.lists[kind].flatMap(({ raw, value }) =>
      AMOUNTS[kind].flatMap((field) => {
        const { date } = value as { readonly date?: string };
        const amount = (value as Record<string, unknown>)[camelName(field)] as WrittenAmount;
        const { id } = value;
        return amount === undefined
          ? []
          : amountFits(project, { kind, id, raw, field, amount, date });
      }),
    ),
  );
};

interface Found {
  readonly kind: string;
  readonly id: string;
  readonly raw: RawRecord;
  readonly field: string;
  readonly amount: WrittenAmount;
  readonly date: string | undefined;
}

function amountFits(
  project: ReadProject,
  { kind, id, raw, field, amount, date }: Found,
): Problem[] {
  const own = project.info?.value.currency;
  const wrong = wrongAmount(raw, field, amount, own);
  if (wrong.length > 0) return wrong;
  const currency = amount.currency ?? own ?? '';
  if (COUNTED.has(kind)) return missingRate(project, { id, raw, currency, date: date ?? '' });
  return kind === 'parts' ? foreignPart(project, { raw, field, amount, currency }) : [];
}

/** What is said of a part has no day, so no rate can be picked for it. */
function foreignPart(
  project: ReadProject,
  { raw, field, amount, currency }: Pick<Found, 'raw' | 'field' | 'amount'> & { currency: string },
): Problem[] {
  const own = currencyOf(project);
  if (own === undefined || currency === own) return [];
  return [
    problemAt(
      raw.placeOf([field]),
      'money/foreign',
      `${field}: "${amount.decimal} ${currency}" is not in the project's currency`,
      `write what it is in ${own}`,
    ),
  ];
}

function wrongAmount(
  raw: RawRecord,
  field: string,
  amount: WrittenAmount,
  own: string | undefined,
): Problem[] {
  const currency = amount.currency ?? own;
  if (currency === undefined) {
    return [
      problemAt(
        raw.placeOf([field]),
        'money/no-currency',
        `${field}: "${amount.decimal}" has no currency, and the project has none of its own`,
        `write "${amount.decimal} GBP" (with your own code), or add "currency: …" to project.yaml`,
      ),
    ];
  }
  if (toMinor(amount.decimal, currency) !== undefined) return [];
  const exponent = exponentOf(currency) ?? 0;
  return [
    problemAt(
      raw.placeOf([field]),
      'money/decimals',
      `${field}: "${amount.decimal}" has more decimals than ${currency} has (${exponent})`,
      'write what was paid',
    ),
  ];
}

function missingRate(
  project: ReadProject,
  { id, raw, currency, date }: Pick<Found, 'id' | 'raw'> & { currency: string; date: string },
): Problem[] {
  const own = currencyOf(project);
  if (own === undefined || currency === own || hasLostRates(project)) return [];
  // A row that was replaced had its rate when it was written, even if that was replaced since.
  const struck = replacedIds(project).has(id);
  const rates = struck ? project.lists.rates : standingRows(project, 'rates');
  const usable = rates.some(
    ({ value }) => value.from === currency && value.to === own && value.date <= date,
  );
  if (usable) return [];
  return [
    problemAt(
      raw.placeOf(['amount']),
      'money/no-rate',
      `amount: no recorded rate from ${currency} to ${own} on or before ${date}`,
      `add a row to ledger/rates: date ${date}, from ${currency}, to ${own}, rate, source`,
    ),
  ];
}

// A rate with a mistake of its own may be the one that is wanted.
function hasLostRates({ lost }: ReadProject): boolean {
  return lost.kinds.has('rates') || (lost.ids.get('rates')?.length ?? 0) > 0;
}
