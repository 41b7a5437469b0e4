import { type Breakdown, breakDown, type Figure, type FigureRow } from '../book/figure.ts';
import type { PartOnDay, View } from '../book/types.ts';
import type { CostRow } from '../cost/cost-row.ts';
import type { Money } from '../money/money.ts';
import { convertUnit } from '../units/unit.ts';
import type { Words } from '../words/words.ts';

/** A part as a row behind a share. */
export interface OriginRow extends FigureRow {
  readonly item: PartOnDay;
  /** Mass of all its pieces in kg, when it is known. */
  readonly kilograms: number | undefined;
}

/** What the machine is made of by the source that it came from, as of a day. */
export interface Origins {
  /** Pieces: a part counts as often as its quantity says. */
  readonly pieces: Breakdown<number, OriginRow>;
  /** In kg, of the parts whose mass is known; how many are not is said with it. */
  readonly mass: Breakdown<number, OriginRow>;
  /** All money spent, credits taken off, as on the cost sheet. */
  readonly cost: Breakdown<Money, CostRow>;
}

/** Shares of the sources on the view's day. Parts fitted or in hand count; those wanted, ordered, for sale or gone don't. */
export function originsOn(view: View): Origins {
  const rows = view.parts.filter((item) => counts(item, view)).map(rowOf(view));
  const sources = view.project.sources;
  const grouping = {
    keyOf: ({ item }: OriginRow) => item.part.source,
    nameOf: (key: string) => sources.find(({ id }) => id === key)?.name ?? key,
    order: sources.map(({ id }) => id),
  };
  return {
    pieces: breakDown(rows, grouping, countPieces),
    mass: breakDown(rows, grouping, sumMass),
    cost: view.costsBySource,
  };
}

function counts({ part, state }: PartOnDay, { day }: View): boolean {
  const isForSale = part.forSale !== undefined && part.forSale <= day;
  return state === 'fitted' || (state === 'in-hand' && !isForSale);
}

function rowOf({ project }: View): (item: PartOnDay) => OriginRow {
  return (item) => {
    const { id, name, quantity, mass } = item.part;
    return {
      id,
      date: item.since ?? project.firstDay,
      what: quantity > 1 ? `${name} × ${quantity}` : name,
      item,
      kilograms: mass && convertUnit(mass.value, mass.unit, 'kg') * quantity,
    };
  };
}

function countPieces(rows: readonly OriginRow[]): Figure<number, OriginRow> {
  const value = rows.reduce((all, { item }) => all + item.part.quantity, 0);
  return { value, rows, how: ({ parts }) => parts.sources.howPieces(rows.length) };
}

function sumMass(rows: readonly OriginRow[]): Figure<number, OriginRow> {
  const weighed = rows.filter(({ kilograms }) => kilograms !== undefined);
  const value = weighed.reduce((all, { kilograms }) => all + (kilograms ?? 0), 0);
  const without = rows.length - weighed.length;
  const how = ({ parts: { sources } }: Words) =>
    without > 0 ? sources.howMassWithout(weighed.length, without) : sources.howMass(weighed.length);
  return { value, rows: weighed, how };
}
