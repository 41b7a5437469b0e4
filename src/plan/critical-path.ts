import type { Activity, Network } from './network.ts';

/** One chain of activities that decides the finish, and the wait it begins with, if it does not begin at the start. */
export interface CriticalPath {
  readonly ids: readonly string[];
  readonly wait: string | undefined;
}

const NOTHING = 1e-9;

/**
 * Chains from the start, or from a wait, to the finish, in which nothing may slip. There can be very many in a network with
 * equal branches, so no more than `most` are listed.
 */
export function criticalPaths(
  activities: readonly Activity[],
  network: Extract<Network, { kind: 'network' }>,
  most = 10,
): CriticalPath[] {
  const rows = new Map(network.rows.map((row) => [row.id, row]));
  const byId = new Map(activities.map((activity) => [activity.id, activity]));
  const paths: CriticalPath[] = [];

  function walkBack(id: string, later: readonly string[]): void {
    const start = rows.get(id)?.earlyStart ?? 0;
    const ids = [id, ...later];
    const isTight = (at: number | undefined) => at !== undefined && Math.abs(at - start) < NOTHING;
    const before = (byId.get(id)?.after ?? []).filter((link) =>
      isTight((rows.get(link.id)?.earlyFinish ?? Number.NaN) + link.lag),
    );
    const wait = byId.get(id)?.waits?.find(({ until }) => isTight(until));
    if (before.length === 0 && paths.length < most) paths.push({ ids, wait: wait?.id });
    for (const link of before) if (paths.length < most) walkBack(link.id, ids);
  }

  for (const { id, earlyFinish } of network.rows)
    if (network.finish - earlyFinish < NOTHING && paths.length < most) walkBack(id, []);
  return paths;
}
