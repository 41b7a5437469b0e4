import type { CostRecord } from '../model/kinds.ts';
import type { Portion } from '../model/money-fields.ts';
import { toDecimal, toMinor } from '../money/money.ts';
import { taxOf } from '../money/tax.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';

/** Portions name each phase or part once, all by weight or all by amount, and stated amounts add up to the row's. */
export const portionsFit: Rule = ({ project }) => {
  const own = project.info?.value.currency;
  return project.lists.costs.flatMap(({ raw, value }) => [
    ...listFits(raw, 'split-phases', value.splitPhases ?? [], wholeOf(value, own)),
    ...listFits(raw, 'split-parts', value.splitParts ?? [], wholeOf(value, own)),
  ]);
};

interface Whole {
  readonly minor: number;
  readonly currency: string;
}

/** What the portions share: the amount with its tax. */
function wholeOf({ amount, tax, taxRate }: CostRecord, own: string | undefined): Whole | undefined {
  const currency = amount.currency ?? own;
  const size = currency === undefined ? undefined : toMinor(amount.decimal, currency);
  if (size === undefined) return undefined;
  return tax && taxRate ? taxOf(size, taxRate, tax).withTax : size;
}

function listFits(
  raw: RawRecord,
  field: string,
  portions: readonly Portion[],
  whole: Whole | undefined,
): Problem[] {
  if (portions.length === 0) return [];
  const wrong = (code: string, message: string, fix: string) => [
    problemAt(raw.placeOf([field]), `cost/portion-${code}`, `${field}: ${message}`, fix),
  ];
  const ids = portions.map(({ id }) => id);
  const double = ids.find((id, index) => ids.indexOf(id) < index);
  if (double !== undefined) return wrong('twice', `"${double}" stands twice`, 'write it once');

  const stated = portions.filter(({ amount }) => amount !== undefined);
  if (stated.length > 0 && stated.length < portions.length)
    return wrong('mixed', 'weights and amounts are mixed', 'write all with ":" or all with "="');
  if (portions.every(({ weight, amount }) => Number(amount ?? weight) === 0))
    return wrong('nothing', 'all portions are nothing', 'give at least one a weight above 0');
  if (stated.length === 0 || whole === undefined) return [];

  const { currency } = whole;
  const minors = stated.map(({ amount = '' }) => toMinor(amount, currency)?.minor);
  if (minors.includes(undefined))
    return wrong(
      'decimals',
      `an amount has more decimals than ${currency} has`,
      'write whole minor units',
    );
  const told = minors.reduce<number>((total, minor) => total + (minor ?? 0), 0);
  if (told === whole.minor) return [];
  const message = `the amounts add up to ${toDecimal({ minor: told, currency })}, the row to ${toDecimal(whole)}`;
  return wrong('sum', message, 'correct the one that is wrong');
}
