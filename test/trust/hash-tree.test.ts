import { describe, expect, it } from 'vitest';
import { utf8 } from '../../src/trust/hash.ts';
import { emptyRoot, hashTree, leafHash, nodeHash, rootOf } from '../../src/trust/hash-tree.ts';
import { inclusionProof, verifyInclusion } from '../../src/trust/inclusion.ts';

const leaves = (count: number) =>
  Array.from({ length: count }, (_, index) => leafHash(utf8(`row ${index}`)));

describe('a hash tree', () => {
  it('of no leaves has the root of an empty tree', () => {
    expect(hashTree([]).size).toBe(0);
    expect(rootOf([])).toEqual(emptyRoot());
  });

  it('of one leaf has that leaf for a root', () => {
    expect(rootOf(leaves(1))).toEqual(leafHash(utf8('row 0')));
  });

  it('splits at the largest power of two, so that of five leaves the last stands alone', () => {
    const [a, b, c, d, e] = leaves(5) as [Buffer, Buffer, Buffer, Buffer, Buffer];
    expect(rootOf([a, b, c, d, e])).toEqual(nodeHash(nodeHash(nodeHash(a, b), nodeHash(c, d)), e));
  });

  it('still gives the root that it had at every smaller size', () => {
    const tree = hashTree(leaves(70));
    for (let size = 0; size <= 70; size++) expect(tree.root(size)).toEqual(rootOf(leaves(size)));
  });

  it('has another root when two leaves change places', () => {
    const [a, b, ...rest] = leaves(6) as [Buffer, Buffer, ...Buffer[]];
    expect(rootOf([b, a, ...rest])).not.toEqual(rootOf([a, b, ...rest]));
  });

  it('has no leaf that is the hash of its node, even when the bytes are the same', () => {
    const [a, b] = leaves(2) as [Buffer, Buffer];
    expect(rootOf([leafHash(Buffer.concat([a, b]))])).not.toEqual(rootOf([a, b]));
  });

  it.each([6, -1, 2.5, Number.NaN])('of five leaves has no root for the first %d', (size) => {
    expect(() => hashTree(leaves(5)).root(size)).toThrow('this is our bug');
  });
});

// Work that grew with the square of the leaves would take hours here and never reach the end.
it('a tree of 100,000 leaves gives all its proofs', { timeout: 60_000 }, () => {
  const many = leaves(100_000);
  const tree = hashTree(many);
  const root = tree.root();
  const proofs = many.map((_, index) => inclusionProof(tree, index));

  const wrong = proofs.filter((proof, index) => {
    if (index % 97 !== 0) return false;
    const leaf = many[index] ?? emptyRoot();
    return !verifyInclusion({ leaf, index, size: many.length, root }, proof).holds;
  });
  expect(wrong).toEqual([]);
  expect(Math.max(...proofs.map((proof) => proof.length))).toBe(17);
});
