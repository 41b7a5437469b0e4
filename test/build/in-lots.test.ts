import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inLots } from '../../src/build/render-parts.ts';

test('inLots(items, least) puts small items together, the largest first', () => {
  const items = [5, 1, 9, 4, 1].map((bytes) => ({ bytes }));
  const bytes = inLots(items, 6).map((lot) => lot.map((item) => item.bytes));
  expect(bytes).toEqual([[9], [5, 4], [1, 1]]);
});

test('inLots(items, least) gives every item once, and only the last lot may be smaller', () => {
  const sizes = fc.array(fc.nat(1000), { maxLength: 30 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 1, max: 800 }), (all, least) => {
      const items = all.map((bytes, id) => ({ bytes, id }));
      const lots = inLots(items, least);
      const ids = lots.flat().map(({ id }) => id);
      expect(ids.sort((a, b) => a - b)).toEqual(items.map(({ id }) => id));
      const sums = lots.map((lot) => lot.reduce((sum, { bytes }) => sum + bytes, 0));
      expect(sums.slice(0, -1).filter((sum) => sum < least)).toEqual([]);
      expect(lots.filter((lot) => lot.length === 0)).toEqual([]);
    }),
  );
});
