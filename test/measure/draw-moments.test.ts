import { describe, expect, test } from 'vitest';
import { DrawMoments, varianceOfSum } from '../../src/measure/draw-moments.ts';
import { mean, standardDeviation } from '../../src/measure/statistics.ts';

const varianceOf = (list: readonly number[]) => standardDeviation(list) ** 2;

function moments(centre: number, ...blocks: readonly (readonly [number[], number[]])[]) {
  const made = new DrawMoments(centre);
  for (const [y, linear] of blocks)
    made.add({ y: Float64Array.from(y), linear: Float64Array.from(linear) });
  return made;
}
const near = (value: number) => expect.closeTo(value, 12);

describe('mean and deviation of draws', () => {
  const y = [11, 9.5, 12.5, 8, 10.5];
  const linear = [1.5, -0.5, 2, -2.5, 1];

  test('are told by what the draws do otherwise than the linear part, whose variance is known', () => {
    const made = moments(10, [y.slice(0, 2), linear.slice(0, 2)], [y.slice(2), linear.slice(2)]);
    const apart = y.map((one, index) => one - (linear[index] as number));
    const u = Math.sqrt(7 + varianceOf(y) - varianceOf(linear));
    expect(made.result(7)).toEqual({ mean: near(mean(apart)), u: near(u) });
  });

  test('are the plain ones where the linear part has no variance', () => {
    const plain = { mean: near(mean(y)), u: near(Math.sqrt(varianceOf(y))) };
    const result = moments(10, [y, linear]).result(Number.POSITIVE_INFINITY);
    expect(result).toEqual(plain);
  });

  test('are the plain ones where the linear part tells nothing', () => {
    const plain = { mean: near(mean(y)), u: near(Math.sqrt(varianceOf(y))) };
    expect(moments(10, [y, [0, 0, 0, 0, 0]]).result(3)).toEqual(plain);
    expect(moments(10, [y, linear.map((one) => -one)]).result(7)).toEqual(plain);
  });

  test('are the plain ones where the difference would leave no variance', () => {
    const plain = { mean: near(10), u: near(Math.SQRT2) };
    // 2 − 4.5 + 2.5 is nothing, and with 2.4 it is less.
    for (const known of [2.5, 2.4])
      expect(
        moments(10, [
          [11, 9],
          [1.5, -1.5],
        ]).result(known),
      ).toEqual(plain);
    expect(
      moments(10, [
        [11, 9],
        [1.5, -1.5],
      ]).result(3).u,
    ).toBeCloseTo(Math.sqrt(0.5), 12);
  });

  test('are exact where all draws are the same', () => {
    expect(
      moments(16.1, [
        [16.1, 16.1],
        [0, 0],
      ]).result(0),
    ).toEqual({ mean: 16.1, u: 0 });
  });
});

describe('the variance of a sum of sources', () => {
  const normal = {
    key: 'n',
    group: 'n',
    u: 2,
    nu: Number.POSITIVE_INFINITY,
    shape: 'normal',
  } as const;
  const student = { ...normal, key: 't', group: 't', u: 3, shape: 'student' } as const;

  test('adds squares, of Student’s t with ν over ν − 2', () => {
    expect(varianceOfSum([normal, { ...normal, shape: 'rectangular', u: 1 }])).toBe(5);
    expect(varianceOfSum([normal, { ...student, nu: 3 }])).toBe(4 + 27);
    expect(varianceOfSum([{ ...student, nu: 6 }])).toBe(13.5);
    expect(varianceOfSum([student])).toBe(9);
  });

  test('has none for a Student’s t of up to two degrees of freedom, unless it adds nothing', () => {
    for (const nu of [1, 2]) {
      expect(varianceOfSum([{ ...student, nu }])).toBe(Number.POSITIVE_INFINITY);
      expect(varianceOfSum([normal, { ...student, nu, u: 0 }])).toBe(4);
    }
  });
});
