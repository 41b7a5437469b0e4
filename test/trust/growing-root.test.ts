import { expect, it } from 'vitest';
import { rootsAt } from '../../src/trust/growing-root.ts';
import { hashTree } from '../../src/trust/hash-tree.ts';
import { rowLeaf } from '../../src/trust/row-hash.ts';
import { rowTexts } from './small-ledger.ts';

it('rootsAt finds the same roots as the whole tree, for every size up to 40', () => {
  const leaves = rowTexts(40).map(rowLeaf);
  const tree = hashTree(leaves);
  const sizes = leaves.map((_, index) => index + 1);
  expect([...rootsAt(leaves, new Set(sizes))]).toEqual(
    sizes.map((size) => [size, tree.root(size)]),
  );
  expect(rootsAt(leaves, new Set([41])).size).toBe(0);
});
