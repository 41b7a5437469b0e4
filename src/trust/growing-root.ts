import type { Hash } from './hash.ts';
import { nodeHash } from './hash-tree.ts';

/** The roots over the first leaves, for each of these sizes, from leaves that come one by one: no more than log₂ n hashes are held. */
export function rootsAt(leaves: Iterable<Hash>, sizes: ReadonlySet<number>): Map<number, Hash> {
  const roots = new Map<number, Hash>();
  // The roots of full subtrees, the widest first: one for each bit of the count.
  const full: Hash[] = [];
  let count = 0;
  for (const leaf of leaves) {
    count++;
    full.push(leaf);
    for (let bits = count; bits % 2 === 0; bits /= 2)
      full.splice(-2, 2, nodeHash(full.at(-2) as Hash, full.at(-1) as Hash));
    if (sizes.has(count))
      roots.set(
        count,
        full.reduceRight((right, left) => nodeHash(left, right)),
      );
  }
  return roots;
}
