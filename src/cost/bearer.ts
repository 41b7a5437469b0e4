import type { View } from '../book/types.ts';
import { type CostRow, isTakings } from './cost-row.ts';

/** Who bears a cost row: a machine bought whole, the parts that it names, or neither. */
export type Bearer = 'machine' | 'parts' | 'rest';

/** What is paid for a machine as a whole, whichever parts the row names. */
const OF_MACHINE: ReadonlySet<string> = new Set(['vehicle', 'transport', 'fee']);

/**
 * Who bears a row, so that each has exactly one. Of the rows that name a machine as their source, it bears what was taken for
 * pieces of it, what was paid for it whole (vehicle, transport, fee) and what names no part. Any other row that names parts,
 * say the blasting of an axle after it came off, is those parts' own.
 */
export function bearerOf(row: CostRow, machines: ReadonlySet<string>): Bearer {
  const ofWhole = isTakings(row.kind) || OF_MACHINE.has(row.category) || row.parts.length === 0;
  if (row.source !== undefined && machines.has(row.source) && ofWhole) return 'machine';
  return row.parts.length > 0 ? 'parts' : 'rest';
}

/** Rows in the totals on the day of a view, by who bears them. */
export function rowsByBearer(view: View): ReadonlyMap<Bearer, readonly CostRow[]> {
  const machines = machineIds(view);
  return Map.groupBy(
    view.costs.filter(({ inTotals }) => inTotals),
    (row) => bearerOf(row, machines),
  );
}

/** Ids of the machines of a project that were bought whole: the one that is built, and the donors. */
export function machineIds({ project }: View): ReadonlySet<string> {
  return new Set(
    project.sources.filter(({ kind }) => kind === 'base' || kind === 'donor').map(({ id }) => id),
  );
}
