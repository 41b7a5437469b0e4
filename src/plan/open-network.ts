import type { ForecastPhase, ForecastWait } from './forecast-types.ts';

/** The phases that are not finished, by number, as flat lists that a draw can walk without making anything. */
export interface OpenNetwork {
  /** Each after its predecessors. */
  readonly phases: readonly ForecastPhase[];
  /** Links into phase i are those from `linksFrom[i]` up to `linksFrom[i + 1]`; waits likewise. */
  readonly linksFrom: Int32Array;
  readonly linkTo: Int32Array;
  readonly lags: Float64Array;
  readonly waitsFrom: Int32Array;
  readonly waitTo: Int32Array;
  /** Days after the start that are fixed, since what is waited for is over: the lag after a finished phase. */
  readonly notBefore: Float64Array;
}

/**
 * Numbers the open phases of an ordered list. A phase that is under way has begun, so its predecessors no longer hold it back;
 * a wait still does.
 */
export function openNetwork(
  ordered: readonly ForecastPhase[],
  waits: readonly ForecastWait[],
  asOf: number,
): OpenNetwork {
  const phases = ordered.filter(({ state }) => state !== 'finished');
  const numberOf = new Map(phases.map(({ id }, index) => [id, index]));
  const finishOf = new Map(ordered.map(({ id, finished }) => [id, finished]));
  const linksOf = phases.map(({ state, after }) => (state === 'under way' ? [] : after));
  const openLinks = linksOf.map((links) => links.filter(({ id }) => numberOf.has(id)));
  const waitsOf = phases.map(({ id }) =>
    waits.flatMap((wait, index) => (wait.phases.includes(id) ? [index] : [])),
  );
  const notBefore = linksOf.map((links) =>
    links.reduce((latest, { id, lag }) => {
      const finished = finishOf.get(id);
      return finished === undefined ? latest : Math.max(latest, finished - asOf + lag);
    }, 0),
  );
  return {
    phases,
    linksFrom: starts(openLinks),
    linkTo: Int32Array.from(openLinks.flat(), ({ id }) => numberOf.get(id) ?? 0),
    lags: Float64Array.from(openLinks.flat(), ({ lag }) => lag),
    waitsFrom: starts(waitsOf),
    waitTo: Int32Array.from(waitsOf.flat()),
    notBefore: Float64Array.from(notBefore),
  };
}

function starts(lists: readonly (readonly unknown[])[]): Int32Array {
  const from = new Int32Array(lists.length + 1);
  for (const [index, list] of lists.entries())
    from[index + 1] = (from[index] as number) + list.length;
  return from;
}
