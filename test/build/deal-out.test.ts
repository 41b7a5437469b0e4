import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dealOut } from '../../src/build/render-parts.ts';

test('dealOut(items, count) gives each share about the same: the largest first', () => {
  const items = [5, 1, 9, 4].map((bytes) => ({ bytes }));
  const bytes = dealOut(items, 2).map((share) => share.map((item) => item.bytes));
  expect(bytes).toEqual([
    [9, 1],
    [5, 4],
  ]);
});

test('dealOut(items, count) gives every item once, in no more shares than there are items or cores', () => {
  const sizes = fc.array(fc.nat(1000), { maxLength: 30 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 1, max: 8 }), (all, count) => {
      const items = all.map((bytes, id) => ({ bytes, id }));
      const shares = dealOut(items, count);
      expect(shares).toHaveLength(Math.min(count, items.length));
      expect(
        shares
          .flat()
          .map(({ id }) => id)
          .sort((a, b) => a - b),
      ).toEqual(items.map(({ id }) => id));
      const least = Math.min(...shares.map((share) => share.length), 1);
      expect(items.length === 0 || least === 1).toBe(true);
    }),
  );
});
