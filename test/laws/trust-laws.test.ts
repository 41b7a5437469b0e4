import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { consistencyProof, verifyConsistency } from '../../src/trust/consistency.ts';
import type { Hash } from '../../src/trust/hash.ts';
import { hashTree, leafHash, rootOf } from '../../src/trust/hash-tree.ts';
import { inclusionProof, verifyInclusion } from '../../src/trust/inclusion.ts';
import type { Proof } from '../../src/trust/proof.ts';

// Leaves differ from one another, as rows do by their serial.
const leavesOf = (count: number, seed: number): Hash[] =>
  Array.from({ length: count }, (_, index) => leafHash(Buffer.from(`${seed}/${index}`)));

/** A tree, and two places in it, the first before or at the second. */
const grown = fc
  .record({ count: fc.integer({ min: 1, max: 130 }), seed: fc.nat() })
  .chain(({ count, seed }) =>
    fc
      .tuple(fc.integer({ min: 1, max: count }), fc.integer({ min: 1, max: count }))
      .map(([a, b]) => {
        const leaves = leavesOf(count, seed);
        return { leaves, tree: hashTree(leaves), first: Math.min(a, b), second: Math.max(a, b) };
      }),
  );

const flip = (hash: Hash, bit: number): Hash =>
  hash.map((byte, index) => (index === bit >> 3 ? byte ^ (1 << (bit & 7)) : byte));
const bit = fc.nat(255);

/** All that can be done to a list of hashes by leaving out, putting in, changing places or flipping one bit. */
const spoilt = (proof: Proof, stranger: Hash, at: number, which: number): Proof[] => [
  [...proof, stranger],
  [stranger, ...proof],
  ...(proof.length === 0
    ? []
    : [
        proof.slice(0, -1),
        proof.slice(1),
        proof.toSpliced(at % proof.length, 1),
        proof.with(at % proof.length, flip(proof[at % proof.length] ?? stranger, which)),
      ]),
  ...(proof.length < 2 ? [] : [[...proof.slice(-1), ...proof.slice(1, -1), ...proof.slice(0, 1)]]),
];

describe('an inclusion proof', () => {
  it('of any leaf of any tree holds, for the tree of any size', () => {
    fc.assert(
      fc.property(grown, ({ leaves, tree, first, second }) => {
        const index = first - 1;
        const leaf = leaves[index] ?? leafHash(Buffer.of());
        const claim = { leaf, index, size: second, root: rootOf(leaves.slice(0, second)) };
        expect(verifyInclusion(claim, inclusionProof(tree, index, second)).holds).toBe(true);
      }),
    );
  });

  it('is refused once anything about it is changed', () => {
    fc.assert(
      fc.property(grown, fc.nat(), bit, ({ leaves, tree, first, second }, at, which) => {
        const index = first - 1;
        const leaf = leaves[index] ?? leafHash(Buffer.of());
        const claim = { leaf, index, size: second, root: tree.root(second) };
        const proof = inclusionProof(tree, index, second);
        const holds = (change: Partial<typeof claim>, given = proof) =>
          verifyInclusion({ ...claim, ...change }, given).holds;

        expect(holds({ leaf: flip(leaf, which) })).toBe(false);
        expect(holds({ root: flip(claim.root, which) })).toBe(false);
        expect(holds({ index: index + 1 })).toBe(false);
        expect(holds({ index: index - 1 })).toBe(false);
        expect(spoilt(proof, leaf, at, which).filter((given) => holds({}, given))).toEqual([]);
      }),
    );
  });
});

describe('a consistency proof', () => {
  it('holds between any two sizes of a tree', () => {
    fc.assert(
      fc.property(grown, ({ leaves, tree, first, second }) => {
        const firstRoot = rootOf(leaves.slice(0, first));
        const secondRoot = rootOf(leaves.slice(0, second));
        const proof = consistencyProof(tree, first, second);
        const claim = { first, second, firstRoot, secondRoot };
        expect(verifyConsistency(claim, proof).holds).toBe(true);
      }),
    );
  });

  it('is refused once anything about it is changed', () => {
    fc.assert(
      fc.property(grown, fc.nat(), bit, ({ tree, first, second }, at, which) => {
        const [firstRoot, secondRoot] = [tree.root(first), tree.root(second)];
        const claim = { first, second, firstRoot, secondRoot };
        const proof = consistencyProof(tree, first, second);
        const holds = (change: Partial<typeof claim>, given = proof) =>
          verifyConsistency({ ...claim, ...change }, given).holds;

        expect(holds({ firstRoot: flip(firstRoot, which) })).toBe(false);
        expect(holds({ secondRoot: flip(secondRoot, which) })).toBe(false);
        const swapped = { firstRoot: secondRoot, secondRoot: firstRoot };
        expect(holds(swapped)).toBe(first === second);
        expect(spoilt(proof, firstRoot, at, which).filter((given) => holds({}, given))).toEqual([]);
      }),
    );
  });

  it('can not be had for a tree in which a leaf of the first was changed', () => {
    fc.assert(
      fc.property(grown, fc.nat(), bit, ({ leaves, tree, first, second }, at, which) => {
        const changed = at % first;
        const rewritten = hashTree(
          leaves.map((leaf, index) => (index === changed ? flip(leaf, which) : leaf)),
        );
        const roots = { firstRoot: tree.root(first), secondRoot: rewritten.root(second) };
        const proof = consistencyProof(rewritten, first, second);
        expect(verifyConsistency({ first, second, ...roots }, proof).holds).toBe(false);
      }),
    );
  });
});

it('the root is another one when two leaves change places, wherever they are', () => {
  fc.assert(
    fc.property(grown, ({ leaves, first, second }) => {
      const [a, b] = [leaves[first - 1] ?? Buffer.of(), leaves[second - 1] ?? Buffer.of()];
      const swapped = leaves.with(first - 1, b).with(second - 1, a);
      expect(Buffer.compare(rootOf(swapped), rootOf(leaves)) === 0).toBe(first === second);
    }),
  );
});
