import {
  type Activity,
  type Network,
  type Scheduled,
  solveNetwork,
} from '../../src/plan/network.ts';

/** A network that is known to have no ring. */
export function solved(activities: readonly Activity[]): Extract<Network, { kind: 'network' }> {
  const network = solveNetwork(activities);
  if (network.kind === 'loop') throw new Error(`a ring: ${network.ids}`);
  return network;
}

/** Its rows by id. */
export function rowsOf(activities: readonly Activity[]): Map<string, Scheduled> {
  return new Map(solved(activities).rows.map((row) => [row.id, row]));
}

/** An activity in short: its duration, and its predecessors as `B` or, with a lag, as `['B', 2]`. */
export function activity(
  id: string,
  duration: number,
  ...after: readonly (string | readonly [string, number])[]
): Activity {
  const links = after.map((link) =>
    typeof link === 'string' ? { id: link, lag: 0 } : { id: link[0], lag: link[1] },
  );
  return { id, duration, after: links };
}
