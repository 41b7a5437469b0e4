import { type Hash, sameBytes } from './hash.ts';
import { type HashTree, nodeHash, splitPoint } from './hash-tree.ts';
import {
  fails,
  HOLDS,
  half,
  isCount,
  isHash,
  isOdd,
  isProof,
  type Proof,
  type Verified,
} from './proof.ts';

/** What an inclusion proof is about: the leaf with this hash is at this index of the tree with this size and root. */
export interface InclusionClaim {
  readonly leaf: Hash;
  readonly index: number;
  readonly size: number;
  readonly root: Hash;
}

/** Why an inclusion proof does not hold. */
export type InclusionFailure =
  | 'not-a-count'
  | 'empty-tree'
  | 'index-outside'
  | 'not-a-hash'
  | 'proof-too-short'
  | 'proof-too-long'
  | 'root-differs';

/**
 * RFC 9162 §2.1.3.1: the proof that leaf `index` is in the tree of the first `size` leaves; 0 ≤ index < size ≤ tree.size.
 *
 * @throws RangeError outside these bounds.
 */
export function inclusionProof(tree: HashTree, index: number, size: number = tree.size): Proof {
  if (!isCount(index) || !isCount(size) || index >= size || size > tree.size)
    throw new RangeError(`leaf ${index} is not among ${size} of ${tree.size}; this is our bug`);
  return path(tree, index, 0, size);
}

/** `PATH(m, D[start:end])`, with m counted from the start of the whole tree. */
function path(tree: HashTree, m: number, start: number, end: number): Hash[] {
  if (end - start === 1) return [];
  const middle = start + splitPoint(end - start);
  return m < middle
    ? [...path(tree, m, start, middle), tree.range(middle, end)]
    : [...path(tree, m, middle, end), tree.range(start, middle)];
}

/** RFC 9162 §2.1.3.2, with its names fn, sn, r and p. Any input gets an answer; nothing is thrown. */
export function verifyInclusion(
  { leaf, index, size, root }: InclusionClaim,
  proof: Proof,
): Verified<InclusionFailure> {
  if (!isCount(index) || !isCount(size)) return fails('not-a-count');
  if (size === 0) return fails('empty-tree');
  if (!isHash(leaf) || !isHash(root) || !isProof(proof)) return fails('not-a-hash');
  if (index >= size) return fails('index-outside'); // step 1

  let [fn, sn] = [index, size - 1]; // step 2
  let r = leaf; // step 3
  for (const p of proof) {
    if (sn === 0) return fails('proof-too-long'); // step 4
    if (isOdd(fn) || fn === sn) {
      r = nodeHash(p, r);
      while (!isOdd(fn) && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else {
      r = nodeHash(r, p);
    }
    [fn, sn] = [half(fn), half(sn)];
  }

  if (sn !== 0) return fails('proof-too-short'); // step 5
  return sameBytes(r, root) ? HOLDS : fails('root-differs');
}
