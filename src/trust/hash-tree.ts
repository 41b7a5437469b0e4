import { type Hash, sha256 } from './hash.ts';

const LEAF = Uint8Array.of(0x00);
const NODE = Uint8Array.of(0x01);

/** RFC 9162 §2.1.1 (RFC 6962 §2.1): `HASH(0x00 || d)`. The prefix keeps a leaf from ever passing for a node. */
export function leafHash(data: Uint8Array): Hash {
  return sha256(LEAF, data);
}

/** RFC 9162 §2.1.1: `HASH(0x01 || left || right)`. */
export function nodeHash(left: Hash, right: Hash): Hash {
  return sha256(NODE, left, right);
}

/** RFC 9162 §2.1.1: the hash of an empty list is the hash of an empty string. */
export function emptyRoot(): Hash {
  return sha256();
}

/** RFC 9162 §2.1.1: `k`, the largest power of two smaller than n; 1 < n < 2³¹. */
export function splitPoint(n: number): number {
  return 2 ** (31 - Math.clz32(n - 1));
}

/** A hash tree that is built once, in time that grows with its leaves, and then gives any hash of it at once. */
export interface HashTree {
  readonly size: number;
  /** `MTH(D_size)`: the root over the first leaves, as it was when there were no more; 0 ≤ size ≤ tree.size. */
  root(size?: number): Hash;
  /** `MTH(D[start:end])` of a range that arises when the tree, or the tree of its first leaves, is split by RFC 9162 §2.1.1. */
  range(start: number, end: number): Hash;
}

/** Builds the tree over leaf hashes. */
export function hashTree(leaves: readonly Hash[]): HashTree {
  const levels = fullLevels(leaves);
  const ragged = new Map<string, Hash>();

  function range(start: number, end: number): Hash {
    const width = end - start;
    const level = Math.log2(width);
    const full = Number.isInteger(level) ? levels[level]?.[start / width] : undefined;
    return full ?? raggedRange(start, end);
  }

  /** A range at the right edge, which is no full subtree. A tree of n leaves has log₂ n of them; they are kept. */
  function raggedRange(start: number, end: number): Hash {
    const key = `${start}:${end}`;
    const middle = start + splitPoint(end - start);
    const found = ragged.get(key) ?? nodeHash(range(start, middle), range(middle, end));
    ragged.set(key, found);
    return found;
  }

  function root(size = leaves.length): Hash {
    requireWithin(size, leaves.length);
    return size === 0 ? emptyRoot() : range(0, size);
  }

  return { size: leaves.length, root, range };
}

/** The root over leaf hashes, `MTH(D_n)`. */
export function rootOf(leaves: readonly Hash[]): Hash {
  return hashTree(leaves).root();
}

/**
 * The hashes of all full subtrees: `levels[k][i]` stands over the leaves from i·2ᵏ to (i+1)·2ᵏ.
 *
 * ```
 * levels[2]        0
 * levels[1]    0       1
 * levels[0]  0   1   2   3   4      leaf 4 is in no full pair yet
 * ```
 */
function fullLevels(leaves: readonly Hash[]): readonly (readonly Hash[])[] {
  const levels: (readonly Hash[])[] = [leaves];
  for (let below = leaves; below.length > 1; below = levels.at(-1) ?? [])
    levels.push(pairUp(below));
  return levels;
}

function pairUp(below: readonly Hash[]): Hash[] {
  const above: Hash[] = [];
  for (let i = 0; i + 1 < below.length; i += 2) {
    const [left, right] = [below[i], below[i + 1]];
    if (left && right) above.push(nodeHash(left, right));
  }
  return above;
}

function requireWithin(size: number, most: number): void {
  if (!Number.isInteger(size) || size < 0 || size > most)
    throw new RangeError(`no tree of ${size} leaves can be cut from ${most}; this is our bug`);
}
