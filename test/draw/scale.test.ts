import { describe, expect, test } from 'vitest';
import { airy, linearScale, roundTicks } from '../../src/draw/scale.ts';

describe('linearScale', () => {
  test('maps the ends of a range to the ends of its places, up or down', () => {
    const across = linearScale([0, 50], [10, 90]);
    expect([0, 25, 50, 75].map(across)).toEqual([10, 50, 90, 130]);
    const down = linearScale([0, 50], [200, 20]);
    expect([0, 50].map(down)).toEqual([200, 20]);
  });

  test('puts a range of one value in the middle', () => {
    expect(linearScale([7, 7], [10, 90])(7)).toBe(50);
  });
});

describe('airy', () => {
  test('adds a share of the range at both ends', () => {
    expect(airy([10, 20], 0.1)).toEqual([9, 21]);
  });

  test('adds a tenth of its size to a single value, and something to nothing', () => {
    expect(airy([50])).toEqual([45, 55]);
    expect(airy([-50])).toEqual([-55, -45]);
    const [low, high] = airy([0]);
    expect(high).toBeGreaterThan(low);
  });
});

describe('roundTicks', () => {
  test.each([
    [[0, 100], 4, [0, 50, 100]],
    [[0, 8], 4, [0, 2, 4, 6, 8]],
    [[645, 853], 4, [700, 800]],
    [[0.1, 0.42], 4, [0.1, 0.2, 0.3, 0.4]],
    [[-3, 3], 3, [-2, 0, 2]],
  ] as const)('of %j, about %i of them, are %j', ([from, to], count, ticks) => {
    expect(roundTicks([from, to], count)).toEqual(ticks);
  });
});
