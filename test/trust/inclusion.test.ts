import { describe, expect, it } from 'vitest';
import { sha256, utf8 } from '../../src/trust/hash.ts';
import { emptyRoot, hashTree, leafHash } from '../../src/trust/hash-tree.ts';
import { type InclusionClaim, inclusionProof, verifyInclusion } from '../../src/trust/inclusion.ts';

const leaves = Array.from({ length: 7 }, (_, index) => leafHash(utf8(`row ${index}`)));
const tree = hashTree(leaves);
const proof = inclusionProof(tree, 3);
const claim: InclusionClaim = {
  leaf: leaves[3] ?? emptyRoot(),
  index: 3,
  size: 7,
  root: tree.root(),
};
const other = sha256(utf8('something else'));

describe('an inclusion proof', () => {
  it('holds for its own leaf, index, size and root', () => {
    expect(verifyInclusion(claim, proof)).toEqual({ holds: true });
  });

  it('is empty in a tree of one leaf', () => {
    expect(inclusionProof(tree, 0, 1)).toEqual([]);
    const leaf = leaves[0] ?? other;
    expect(verifyInclusion({ leaf, index: 0, size: 1, root: leaf }, [])).toEqual({ holds: true });
  });

  it('for an older, smaller tree comes from the same tree', () => {
    const older = inclusionProof(tree, 3, 5);
    const root = tree.root(5);
    expect(verifyInclusion({ ...claim, size: 5, root }, older)).toEqual({ holds: true });
    expect(verifyInclusion(claim, older).holds).toBe(false);
  });

  it.each([
    [7, 7],
    [-1, 7],
    [0.5, 7],
    [0, 0],
    [0, 8],
  ])('of leaf %d among %d can not be made from seven', (index, size) => {
    expect(() => inclusionProof(tree, index, size)).toThrow('this is our bug');
  });
});

describe('an inclusion proof is refused', () => {
  const short = Uint8Array.of(1, 2, 3);
  it.each<[string, Partial<InclusionClaim>, unknown, string]>([
    ['for another leaf', { leaf: other }, proof, 'root-differs'],
    ['for the index before', { index: 2 }, proof, 'root-differs'],
    ['for the index after, which has a shorter path', { index: 6 }, proof, 'proof-too-long'],
    ['for another root', { root: other }, proof, 'root-differs'],
    ['for the root of an empty tree', { root: emptyRoot() }, proof, 'root-differs'],
    ['in a tree of no leaves', { index: 0, size: 0 }, [], 'empty-tree'],
    ['at an index equal to the size', { index: 7 }, proof, 'index-outside'],
    ['at an index beyond the size', { index: 1e15 }, proof, 'index-outside'],
    ['at a negative index', { index: -1 }, proof, 'not-a-count'],
    ['at half an index', { index: 2.5 }, proof, 'not-a-count'],
    ['at no index', { index: Number.NaN }, proof, 'not-a-count'],
    ['in a tree of endless size', { size: Number.POSITIVE_INFINITY }, proof, 'not-a-count'],
    ['in a tree of more leaves than a double counts', { size: 2 ** 53 }, proof, 'not-a-count'],
    ['in a far larger tree', { size: 2 ** 40 }, proof, 'proof-too-short'],
    ['without its hashes', {}, [], 'proof-too-short'],
    ['without its last hash', {}, proof.slice(0, -1), 'proof-too-short'],
    ['with one hash more', {}, [...proof, other], 'proof-too-long'],
    ['with one hash before', {}, [other, ...proof], 'proof-too-long'],
    ['with its hashes the other way round', {}, proof.toReversed(), 'root-differs'],
    ['with a hash cut short', {}, [short, ...proof.slice(1)], 'not-a-hash'],
    ['for a leaf that is no hash', { leaf: short }, proof, 'not-a-hash'],
    ['for a root that is no hash', { root: new Uint8Array() }, proof, 'not-a-hash'],
    ['when it is text', {}, proof.map((hash) => Buffer.from(hash).toString('hex')), 'not-a-hash'],
    ['when it is no list', {}, null, 'not-a-hash'],
  ])('%s', (_, change, given, failure) => {
    // A proof that was read from a file can be anything, whatever its type says.
    const result = verifyInclusion({ ...claim, ...change }, given as typeof proof);
    expect(result).toEqual({ holds: false, failure });
  });
});
