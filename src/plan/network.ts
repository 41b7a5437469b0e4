import { inOrder } from './order.ts';

/** A finish-to-start link: the follower starts `lag` after this one's finish; a negative lag is an overlap. */
export interface Link {
  readonly id: string;
  readonly lag: number;
}

/** Something other than work that holds a start back: a wanted part, a part sent out, weather. */
export interface Wait {
  readonly id: string;
  /** The start is not before this time. */
  readonly until: number;
}

/** A piece of work. All times of a network are in one unit of the caller's choice, counted from its start at 0. */
export interface Activity {
  readonly id: string;
  readonly duration: number;
  readonly after: readonly Link[];
  readonly waits?: readonly Wait[];
}

/** What decides a start: the start of the whole, a predecessor or a wait. */
export type Driver =
  | { readonly by: 'start' }
  | { readonly by: 'activity'; readonly id: string }
  | { readonly by: 'wait'; readonly id: string };

/** An activity with its times. */
export interface Scheduled {
  readonly id: string;
  readonly duration: number;
  readonly earlyStart: number;
  readonly earlyFinish: number;
  readonly lateStart: number;
  readonly lateFinish: number;
  /** How much later it may start without moving the finish of the whole. */
  readonly totalFloat: number;
  /** How much later it may start without moving anything. */
  readonly freeFloat: number;
  readonly critical: boolean;
  readonly driver: Driver;
}

/** A solved network in an order in which each activity stands after its predecessors, or the ring that has no order. */
export type Network =
  | { readonly kind: 'network'; readonly rows: readonly Scheduled[]; readonly finish: number }
  | { readonly kind: 'loop'; readonly ids: readonly string[] };

interface Early {
  readonly earlyStart: number;
  readonly earlyFinish: number;
  readonly driver: Driver;
}

interface Late {
  readonly lateFinish: number;
  /** The latest finish that moves no follower from its early start. */
  readonly freeFinish: number;
}

// Sums of decimal hours come out a little off; a float below this is none.
const NOTHING = 1e-9;

/** Critical-path method (Kelley and Walker, 1959) on activities as nodes, with lags and starts that have to wait. */
export function solveNetwork(activities: readonly Activity[]): Network {
  const order = inOrder(activities);
  if (order.kind === 'loop') return order;

  const early = forwards(order.items);
  let finish = 0;
  for (const { earlyFinish } of early.values()) finish = Math.max(finish, earlyFinish);
  const late = backwards(order.items, early, finish);
  const rows = order.items.map((activity) => scheduled(activity, early, late));
  return { kind: 'network', rows, finish };
}

function forwards(activities: readonly Activity[]): Map<string, Early> {
  const early = new Map<string, Early>();
  for (const { id, duration, after, waits = [] } of activities) {
    let earlyStart = 0;
    let driver: Driver = { by: 'start' };
    for (const link of after) {
      const at = (early.get(link.id)?.earlyFinish ?? Number.NEGATIVE_INFINITY) + link.lag;
      // At the very start a predecessor says more than "the start" does.
      if (at > earlyStart || (at === earlyStart && driver.by === 'start')) {
        earlyStart = at;
        driver = { by: 'activity', id: link.id };
      }
    }
    for (const wait of waits)
      if (wait.until > earlyStart) {
        earlyStart = wait.until;
        driver = { by: 'wait', id: wait.id };
      }
    early.set(id, { earlyStart, earlyFinish: earlyStart + duration, driver });
  }
  return early;
}

function backwards(
  activities: readonly Activity[],
  early: ReadonlyMap<string, Early>,
  finish: number,
): Map<string, Late> {
  const late = new Map<string, Late>();
  for (const { id } of activities) late.set(id, { lateFinish: finish, freeFinish: finish });
  for (const { id, duration, after } of activities.toReversed()) {
    const lateStart = (late.get(id)?.lateFinish ?? finish) - duration;
    const earlyStart = early.get(id)?.earlyStart ?? 0;
    for (const link of after) {
      const before = late.get(link.id);
      if (before === undefined) continue;
      late.set(link.id, {
        lateFinish: Math.min(before.lateFinish, lateStart - link.lag),
        freeFinish: Math.min(before.freeFinish, earlyStart - link.lag),
      });
    }
  }
  return late;
}

function scheduled(
  { id, duration }: Activity,
  early: ReadonlyMap<string, Early>,
  late: ReadonlyMap<string, Late>,
): Scheduled {
  const from = early.get(id);
  const to = late.get(id);
  if (from === undefined || to === undefined) throw new Error(`no times for ${id}: our bug`);
  const totalFloat = clean(to.lateFinish - from.earlyFinish);
  return {
    id,
    duration,
    ...from,
    lateStart: to.lateFinish - duration,
    lateFinish: to.lateFinish,
    totalFloat,
    freeFloat: clean(to.freeFinish - from.earlyFinish),
    critical: totalFloat === 0,
  };
}

const clean = (float: number) => (Math.abs(float) < NOTHING ? 0 : float);
