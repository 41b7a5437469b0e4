import { describe, expect, test } from 'vitest';
import { BLOCK } from '../../src/measure/even-draws.ts';
import { TailDraws } from '../../src/measure/tail-draws.ts';

const P = 0.025;
/** What so many independent draws know of the share beyond an end. */
const wanted = (draws: number) => (P * (1 - P)) / draws;
/** Where the k-th of a block of even draws of a rectangle from 0 to 1 lies. */
const place = (k: number) => (k + 0.5) / BLOCK;
const row = (of: (k: number) => number) => Float64Array.from({ length: BLOCK }, (_, k) => of(k));
const even = row(place);
const nothing = new Float64Array(BLOCK);

interface Blocks {
  readonly y: readonly Float64Array[];
  readonly linear?: readonly Float64Array[];
  readonly cover?: number;
  readonly sign?: 1 | -1;
  readonly asGoodAs?: number;
}

function endOf({ y, linear = [], cover, sign = 1, asGoodAs = BLOCK }: Blocks) {
  const first = (y[0] ?? nothing).toSorted();
  const tail = new TailDraws(sign, first, { p: P, cover, asGoodAs });
  for (const [index, block] of y.entries())
    tail.add({ y: block, linear: linear[index] ?? nothing });
  return tail.end();
}
const times = <T>(count: number, one: T): T[] => Array.from({ length: count }, () => one);

/** Variance of a count of draws that are independent. */
const binomial = (count: number, draws = BLOCK) => count * (1 - count / draws);

describe('an end of plain draws', () => {
  test('is where the asked share of them lies below, between two of them in proportion', () => {
    // 2.5 % of 4096 are 102.4.
    expect(endOf({ y: [even] }).at).toBeCloseTo(P, 12);
    expect(endOf({ y: [even], sign: -1 }).at).toBeCloseTo(1 - P, 12);
    // Of two that are alike, both have the draw that 2.5 % of 8192 come to.
    expect(endOf({ y: [even, even] }).at).toBe(place(102));
  });

  test('is as sure as a count of 102 of 4096, and half a draw for where it falls in a slice', () => {
    const variance = binomial(102) + 0.25;
    const { error, needed } = endOf({ y: [even] });
    expect(error).toBeCloseTo(Math.sqrt(variance) / BLOCK, 12);
    expect(needed).toBeCloseTo(variance / BLOCK / wanted(BLOCK), 9);
    expect(endOf({ y: [even], sign: -1 }).error).toBeCloseTo(error, 12);
  });

  test('is near when it is as sure as so many independent draws', () => {
    const sure = BLOCK ** 2 / (binomial(102) + 0.25);
    const just = sure * P * (1 - P);
    expect(endOf({ y: [even], asGoodAs: 0.999 * just }).near).toBe(true);
    expect(endOf({ y: [even], asGoodAs: 1.001 * just }).near).toBe(false);
  });

  test('knows only after sixteen blocks that even rows make it surer', () => {
    const variances = [2, 15, 16, 17, 32].map(
      (count) => endOf({ y: times(count, even) }).needed * count * BLOCK * wanted(BLOCK),
    );
    // The end lies at the 103rd draw of each, and counts of blocks that are alike differ by nothing; where it falls in their slices stays unknown.
    const alike = (count: number) => binomial(count * 103, count * BLOCK) + (count / 2) ** 2;
    expect(variances).toEqual(
      [alike(2), alike(15), 64, 128, 128].map((one) => expect.closeTo(one, 6)),
    );
  });

  test('tells by how the blocks differ what they are worth', () => {
    const varianceOf = (by: number) => {
      const moved = [by, -by].map((places) => row((k) => place(k + places)));
      return endOf({ y: times(8, moved).flat() }).needed * 16 * BLOCK * wanted(BLOCK);
    };
    // Of each two, one has three fewer below than the mean and the other three more.
    expect(varianceOf(3)).toBeCloseTo((16 / 15) * 16 * 3 ** 2 + 64, 6);
    // Independent draws are the worst that is believed.
    expect(varianceOf(60)).toBeCloseTo(binomial(16 * 103, 16 * BLOCK) + 64, 6);
  });
});

describe('an end that the linear part steers', () => {
  /** A model that is its linear part and 0.5, with its end at 0.475 below the middle. */
  const straight = { y: [even], linear: [row((k) => place(k) - 0.5)], cover: 0.475 };

  test('is the exact one where the model is straight, however the draws came out', () => {
    for (const by of [0, 7, -7, 30]) {
      const y = [row((k) => place(k + by))];
      const linear = [row((k) => place(k + by) - 0.5)];
      expect(endOf({ y, linear, cover: 0.475 }).at).toBeCloseTo(P, 12);
      expect(endOf({ y, linear, cover: 0.475, sign: -1 }).at).toBeCloseTo(1 - P, 12);
    }
  });

  test('is unsure only of where it falls in a slice', () => {
    const { error, needed, near: enough } = endOf({ ...straight, asGoodAs: 1_000_000 });
    expect(error).toBeCloseTo(0.5 / BLOCK, 12);
    expect(needed).toBeCloseTo(0.25 / BLOCK / wanted(1_000_000), 6);
    expect(enough).toBe(true);
    expect(endOf({ ...straight, asGoodAs: 2_000_000 }).near).toBe(false);
  });

  test('is unsure of each draw that lies below one end and not below the other', () => {
    // Of the 102 below, twenty have an equal above: so many of the linear part are told apart, on both sides.
    const linear = [
      row((k) => {
        if (k < 20) return place(k + 200) - 0.5;
        return place(k >= 200 && k < 220 ? k - 200 : k) - 0.5;
      }),
    ];
    const { at, error, needed } = endOf({ ...straight, linear });
    expect(at).toBeCloseTo(P, 12);
    const variance = binomial(40) + 0.25;
    expect(error).toBeCloseTo(Math.sqrt(variance) / BLOCK, 12);
    expect(needed).toBeCloseTo(variance / BLOCK / wanted(BLOCK), 9);
  });

  test('is the plain one where the linear part tells nothing', () => {
    // The lowest of the linear part are others than those of the result.
    const linear = [row((k) => place((k + 2048) % BLOCK) - 0.5)];
    expect(endOf({ ...straight, linear })).toEqual(endOf({ y: [even] }));
  });

  test('lies at a draw where nothing tells how far beyond it', () => {
    // No draw of the linear part lies below its end, so none of the result does either.
    const none = endOf({ ...straight, linear: [row(() => -0.47)] });
    expect(none.at).toBe(place(0));
    const flat = endOf({ y: [row(() => 16)], linear: [nothing], cover: 0 });
    expect(flat).toMatchObject({ at: 16, error: 0 });
  });
});
