import { describe, expect, it } from 'vitest';
import {
  type ConsistencyClaim,
  consistencyProof,
  verifyConsistency,
} from '../../src/trust/consistency.ts';
import { sha256, utf8 } from '../../src/trust/hash.ts';
import { emptyRoot, hashTree, leafHash, rootOf } from '../../src/trust/hash-tree.ts';

const leaves = Array.from({ length: 11 }, (_, index) => leafHash(utf8(`row ${index}`)));
const tree = hashTree(leaves);
const claimOf = (first: number, second: number): ConsistencyClaim => {
  return { first, second, firstRoot: tree.root(first), secondRoot: tree.root(second) };
};
const claim = claimOf(6, 11);
const proof = consistencyProof(tree, 6, 11);
const other = sha256(utf8('something else'));

describe('a consistency proof', () => {
  it('holds for its own sizes and roots', () => {
    expect(verifyConsistency(claim, proof)).toEqual({ holds: true });
  });

  it('is empty for a tree that did not grow', () => {
    expect(consistencyProof(tree, 6, 6)).toEqual([]);
    expect(verifyConsistency(claimOf(6, 6), [])).toEqual({ holds: true });
  });

  it('does not hold for a tree in which one of the first leaves is another', () => {
    const rewritten = hashTree(leaves.with(2, other));
    const secondRoot = rewritten.root();
    const theirs = consistencyProof(rewritten, 6, 11);
    expect(verifyConsistency({ ...claim, secondRoot }, theirs)).toEqual({
      holds: false,
      failure: 'first-root-differs',
    });
    expect(verifyConsistency({ ...claim, secondRoot }, proof)).toEqual({
      holds: false,
      failure: 'second-root-differs',
    });
  });

  it.each([
    [0, 5],
    [6, 5],
    [6, 12],
    [1.5, 5],
    [-1, 5],
  ])('from %d to %d can not be made from eleven leaves', (first, second) => {
    expect(() => consistencyProof(tree, first, second)).toThrow('this is our bug');
  });
});

describe('a consistency proof is refused', () => {
  const short = Uint8Array.of(1);
  it.each<[string, Partial<ConsistencyClaim>, unknown, string]>([
    ['for another first root', { firstRoot: other }, proof, 'first-root-differs'],
    ['for another second root', { secondRoot: other }, proof, 'second-root-differs'],
    [
      'for roots that changed places',
      { firstRoot: claim.secondRoot, secondRoot: claim.firstRoot },
      proof,
      'first-root-differs',
    ],
    ['from a tree of no leaves', { first: 0, firstRoot: emptyRoot() }, [], 'empty-tree'],
    ['between trees of no leaves', { first: 0, second: 0 }, [], 'empty-tree'],
    ['for a tree that shrank', { first: 11, second: 6 }, proof, 'shrinks'],
    ['for one leaf less at first', { first: 5 }, proof, 'proof-too-short'],
    ['for one leaf more at first', { first: 7 }, proof, 'proof-too-short'],
    ['for a negative size', { first: -6 }, proof, 'not-a-count'],
    ['for no size', { second: Number.NaN }, proof, 'not-a-count'],
    ['for a far larger tree', { second: 2 ** 50 }, proof, 'proof-too-short'],
    ['without its hashes', {}, [], 'proof-too-short'],
    ['without its last hash', {}, proof.slice(0, -1), 'proof-too-short'],
    ['with one hash more', {}, [...proof, other], 'proof-too-long'],
    ['with one hash before', {}, [other, ...proof], 'proof-too-long'],
    ['with its hashes the other way round', {}, proof.toReversed(), 'first-root-differs'],
    ['with a hash cut short', {}, [short, ...proof.slice(1)], 'not-a-hash'],
    ['for a root that is no hash', { firstRoot: short }, proof, 'not-a-hash'],
    ['when it is no list', {}, { length: 3 }, 'not-a-hash'],
  ])('%s', (_, change, given, failure) => {
    // A proof that was read from a file can be anything, whatever its type says.
    const result = verifyConsistency({ ...claim, ...change }, given as typeof proof);
    expect(result).toEqual({ holds: false, failure });
  });

  it('for equal sizes with different roots, or with hashes', () => {
    const same = claimOf(6, 6);
    const wrongRoot = verifyConsistency({ ...same, secondRoot: other }, []);
    expect(wrongRoot).toEqual({ holds: false, failure: 'second-root-differs' });
    const full = verifyConsistency(same, [rootOf(leaves)]);
    expect(full).toEqual({ holds: false, failure: 'proof-too-long' });
  });
});
