import type { PartOnDay, View } from '../book/types.ts';
import type { Search } from '../model/kinds.ts';
import type { Money, WrittenAmount } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import { certain, type MoneyRange } from './amount-row.ts';
import type { OrderOnDay } from './outstanding.ts';
import { inOwnCurrency, moneyOf } from './own-currency.ts';

/** A part that is wanted and neither ordered nor got, and what it may cost. */
export interface PartToBuy {
  readonly part: PartOnDay['part'];
  /** Day it was wanted. */
  readonly since: Day;
  /** What the price rests on. */
  readonly from: 'estimate' | 'search' | 'nothing';
  /** The search whose price it is. */
  readonly search: Search | undefined;
  /** What one may cost; undefined when nothing says. */
  readonly each: MoneyRange | undefined;
  /** What all of them may cost. */
  readonly price: MoneyRange | undefined;
}

type Looked = Pick<View, 'project' | 'day' | 'parts' | 'searches'>;

/** Parts wanted on the day of the view that no order names, in the order of the ledger. */
export function stillToBuy(view: Looked, orders: readonly OrderOnDay[]): readonly PartToBuy[] {
  const named = new Set(orders.filter(holdsItsParts).flatMap(({ order }) => order.parts ?? []));
  return view.parts
    .filter(({ part, state }) => state === 'wanted' && !named.has(part.id))
    .map(({ part, since }) => {
      const found = estimated(view, part) ?? lastSeen(view, part.id);
      return {
        part,
        since: since ?? view.day,
        from: found?.from ?? 'nothing',
        search: found?.search,
        each: found?.each,
        price: found && times(found.each, part.quantity),
      };
    });
}

/** An order that was closed before anything was paid brings nothing. */
function holdsItsParts({ state, paid }: OrderOnDay): boolean {
  return state !== 'closed' || paid.minor !== 0;
}

type Priced = Pick<PartToBuy, 'from' | 'search'> & { readonly each: MoneyRange };

function estimated({ project }: Looked, part: PartToBuy['part']): Priced | undefined {
  const read = (amount: WrittenAmount | undefined) => amount && moneyOf(amount, project);
  const middle = read(part.estimate);
  if (middle === undefined || middle.currency !== project.currency) return undefined;
  const low = lesser(read(part.estimateLow) ?? middle, middle);
  const high = greater(read(part.estimateHigh) ?? middle, middle);
  return { from: 'estimate', search: undefined, each: { low, middle, high } };
}

/** The newest price seen, between the lowest and the highest that was ever seen. */
function lastSeen({ project, searches, day }: Looked, part: string): Priced | undefined {
  const seen = searches.flatMap((search) => {
    const price = search.part === part && search.price && moneyOf(search.price, project);
    const own = price ? inOwnCurrency(project, price, { at: day, day }) : undefined;
    return own ? [{ search, money: own.money }] : [];
  });
  const newest = seen.at(-1);
  if (newest === undefined) return undefined;
  const each = seen.reduce<MoneyRange>(
    ({ low, middle, high }, { money }) => ({
      low: lesser(low, money),
      middle,
      high: greater(high, money),
    }),
    certain(newest.money),
  );
  return { from: 'search', search: newest.search, each };
}

function times({ low, middle, high }: MoneyRange, count: number): MoneyRange {
  const all = ({ minor, currency }: Money) => ({ minor: minor * count, currency });
  return { low: all(low), middle: all(middle), high: all(high) };
}

function lesser(a: Money, b: Money): Money {
  return a.minor < b.minor ? a : b;
}

function greater(a: Money, b: Money): Money {
  return a.minor > b.minor ? a : b;
}
