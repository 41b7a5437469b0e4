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

/** What a consistency proof is about: the tree of `second` leaves begins with all leaves of the tree of `first`, unchanged. */
export interface ConsistencyClaim {
  readonly first: number;
  readonly second: number;
  readonly firstRoot: Hash;
  readonly secondRoot: Hash;
}

/** Why a consistency proof does not hold. */
export type ConsistencyFailure =
  | 'not-a-count'
  | 'empty-tree'
  | 'not-a-hash'
  | 'shrinks'
  | 'proof-too-short'
  | 'proof-too-long'
  | 'first-root-differs'
  | 'second-root-differs';

/**
 * RFC 9162 §2.1.4.1: the proof that the tree of the first `second` leaves extends that of the first `first`;
 * 0 < first ≤ second ≤ tree.size. For equal sizes it is empty.
 *
 * @throws RangeError outside these bounds.
 */
export function consistencyProof(tree: HashTree, first: number, second = tree.size): Proof {
  if (!isCount(first) || !isCount(second) || first === 0 || first > second || second > tree.size)
    throw new RangeError(`${first} to ${second} of ${tree.size} is no growth; this is our bug`);
  return subproof(tree, { first, start: 0, end: second, known: true });
}

interface Part {
  readonly first: number;
  readonly start: number;
  readonly end: number;
  /** The RFC's b: whether this subtree is the whole first tree, whose root the verifier has already. */
  readonly known: boolean;
}

/** `SUBPROOF(m, D[start:end], b)`, with m counted from the start of the whole tree. */
function subproof(tree: HashTree, { first, start, end, known }: Part): Hash[] {
  if (first === end) return known ? [] : [tree.range(start, end)];
  const middle = start + splitPoint(end - start);
  return first <= middle
    ? [...subproof(tree, { first, start, end: middle, known }), tree.range(middle, end)]
    : [...subproof(tree, { first, start: middle, end, known: false }), tree.range(start, middle)];
}

/**
 * Whether a consistency proof holds. Any input gets an answer; nothing is thrown.
 *
 * RFC 9162 wants 0 < first < second. For equal sizes an empty proof and equal roots are right; nothing is proven of an empty tree.
 */
export function verifyConsistency(
  claim: ConsistencyClaim,
  proof: Proof,
): Verified<ConsistencyFailure> {
  const { first, second, firstRoot, secondRoot } = claim;
  if (!isCount(first) || !isCount(second)) return fails('not-a-count');
  if (first === 0) return fails('empty-tree');
  if (!isHash(firstRoot) || !isHash(secondRoot) || !isProof(proof)) return fails('not-a-hash');
  if (first > second) return fails('shrinks');
  if (first < second) return verifyGrowth(claim, proof);

  if (proof.length > 0) return fails('proof-too-long');
  return sameBytes(firstRoot, secondRoot) ? HOLDS : fails('second-root-differs');
}

/** RFC 9162 §2.1.4.2, with its names fn, sn, fr, sr and c. */
function verifyGrowth(
  { first, second, firstRoot, secondRoot }: ConsistencyClaim,
  proof: Proof,
): Verified<ConsistencyFailure> {
  if (proof.length === 0) return fails('proof-too-short'); // step 1
  const [seed = firstRoot, ...rest] = isPowerOfTwo(first) ? [firstRoot, ...proof] : proof; // step 2

  let [fn, sn] = [first - 1, second - 1]; // step 3
  while (isOdd(fn)) [fn, sn] = [half(fn), half(sn)]; // step 4
  let [fr, sr] = [seed, seed]; // step 5
  for (const c of rest) {
    if (sn === 0) return fails('proof-too-long'); // step 6
    if (isOdd(fn) || fn === sn) {
      [fr, sr] = [nodeHash(c, fr), nodeHash(c, sr)];
      while (!isOdd(fn) && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else {
      sr = nodeHash(sr, c);
    }
    [fn, sn] = [half(fn), half(sn)];
  }

  if (sn !== 0) return fails('proof-too-short'); // step 7
  if (!sameBytes(fr, firstRoot)) return fails('first-root-differs');
  return sameBytes(sr, secondRoot) ? HOLDS : fails('second-root-differs');
}

function isPowerOfTwo(number: number): boolean {
  let odd = number;
  while (!isOdd(odd)) odd = half(odd);
  return odd === 1;
}
