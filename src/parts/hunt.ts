import type { Figure, FigureRow } from '../book/figure.ts';
import type { PartOnDay, View } from '../book/types.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { Search } from '../model/kinds.ts';
import { type Day, daysBetween, earliestDay } from '../time/day.ts';

/** What a search came to, from the least to the most. */
const searchResults = ['none', 'listed-not-held', 'promised', 'bought'] as const;

export type SearchResult = (typeof searchResults)[number];

/** A search as a row behind a figure. */
export interface SearchRow extends Search, Standing, FigureRow {}

/** How many there are of something, with the rows that were counted. */
export type Counted<Row extends FigureRow = FigureRow> = Omit<Figure<number, Row>, 'how'>;

/** How the looking for one part went, up to a day. */
export interface Hunt {
  readonly item: PartOnDay;
  /** Day it was wanted, or of the first search when that was earlier. */
  readonly since: Day;
  readonly firstSearch: Day | undefined;
  readonly tries: Counted<SearchRow>;
  readonly results: ReadonlyMap<SearchResult, number>;
  /** The newest price that was seen, as it was written, and whether it could be had. */
  readonly price: SearchRow | undefined;
  /** Days from `since` until it was ordered or got, or until the day. */
  readonly days: number;
  /** Day it was ordered or got; undefined while it is still looked for. */
  readonly found: Day | undefined;
  /** Ids of the phases that wait for it; none once it is found. */
  readonly waiting: readonly string[];
}

/** All hunts of a project up to a day, and what they came to together. */
export interface Hunts {
  readonly hunts: readonly Hunt[];
  readonly found: Counted;
  readonly tries: Counted<SearchRow>;
  /** Tries that met a list with the part in it and a shelf without. */
  readonly notHeld: Counted<SearchRow>;
}

/** Every part that was wanted or searched for by the view's day, the earliest first. */
export function huntsOn(view: View): Hunts {
  const names = new Map(view.parts.map(({ part }) => [part.id, part.name]));
  const searches = view.searches.map((row) => ({
    ...row,
    what: names.get(row.part) ?? row.part,
  }));
  const byPart = Map.groupBy(searches, ({ part }) => part);
  const hunts = view.parts
    .flatMap((item) => huntOf(view, item, byPart.get(item.part.id) ?? []) ?? [])
    .sort((a, b) => compare(a.since, b.since) || compare(a.item.part.id, b.item.part.id));
  const tries = hunts.flatMap((hunt) => hunt.tries.rows);
  const ends = hunts.flatMap(({ item: { part }, found }) =>
    found ? [{ id: part.id, date: found, what: part.name }] : [],
  );
  return {
    hunts,
    found: countOf(ends),
    tries: countOf(tries),
    notHeld: countOf(tries.filter(({ result }) => result === 'listed-not-held')),
  };
}

function huntOf(view: View, item: PartOnDay, rows: readonly SearchRow[]): Hunt | undefined {
  const { part } = item;
  const { day } = view;
  const upTo = (date: Day | undefined) => (date !== undefined && date <= day ? date : undefined);
  const firstSearch = earliestDay(rows.map(({ date }) => date));
  const since = earliestDay([upTo(part.wanted), firstSearch]);
  if (since === undefined) return undefined;

  const found = earliestDay([part.ordered, part.got, part.fitted].map(upTo));
  return {
    item,
    since,
    firstSearch,
    tries: countOf(rows),
    results: new Map(
      searchResults.map((kind) => [kind, rows.filter(({ result }) => result === kind).length]),
    ),
    price: rows.findLast(({ price }) => price !== undefined),
    // What was looked for after it was had took no days.
    days: Math.max(0, daysBetween(since, found ?? day)),
    found,
    waiting: found === undefined ? waitingFor(view, item) : [],
  };
}

/** Phases that a wait says stand still for want of the part; without one, the phase that the part belongs to, until that was called done. */
function waitingFor({ project, day }: View, { part }: PartOnDay): readonly string[] {
  const waits = project.waits.filter(
    (wait) =>
      standsOn(wait, day) &&
      wait.part === part.id &&
      (wait.ended === undefined || wait.ended > day),
  );
  if (waits.length > 0) return [...new Set(waits.map(({ phase }) => phase))];
  const phase = project.phases.find(({ id }) => id === part.phase);
  const isOpen = phase !== undefined && (phase.finished === undefined || phase.finished > day);
  return isOpen ? [phase.id] : [];
}

function countOf<Row extends FigureRow>(rows: readonly Row[]): Counted<Row> {
  return { value: rows.length, rows };
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
