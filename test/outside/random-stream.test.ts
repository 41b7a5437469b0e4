import { expect, test } from 'vitest';
import { randomStream } from '../../src/measure/random.ts';
import { normalBelow } from './distributions.ts';

const MASK = 0xffffffffn;
const turned = (x: bigint, by: bigint) => ((x << by) | (x >> (32n - by))) & MASK;

/** xoshiro128** as its authors give it in C (Blackman and Vigna, 2018), in whole numbers of any size. */
function* xoshiro(state: readonly [bigint, bigint, bigint, bigint]): Generator<bigint> {
  let [a, b, c, d] = state;
  for (;;) {
    yield (turned((b * 5n) & MASK, 7n) * 9n) & MASK;
    const shifted = (b << 9n) & MASK;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = turned(d, 11n);
  }
}

/** Words of a state: steps of the golden ratio, each through the finaliser of MurmurHash3 (Appleby, 2011). */
function mixed(seed: bigint): [bigint, bigint, bigint, bigint] {
  const word = (step: bigint) => {
    let z = (seed + step * 0x9e3779b9n) & MASK;
    z = ((z ^ (z >> 16n)) * 0x85ebca6bn) & MASK;
    z = ((z ^ (z >> 13n)) * 0xc2b2ae35n) & MASK;
    return z ^ (z >> 16n);
  };
  return [word(1n), word(2n), word(3n), word(4n)];
}

test('the reference gives the words that the authors’ C program gives', () => {
  // Test vector of the crate rand_xoshiro, made with that program: state 1, 2, 3, 4.
  const words = xoshiro([1n, 2n, 3n, 4n]);
  expect(Array.from({ length: 10 }, () => Number(words.next().value))).toEqual([
    ...[11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849],
    ...[3729100597, 4258142804],
  ]);
});

test.each([0, 1, 7919, 0x7fffffff, 0xffffffff])(
  'random numbers are those of xoshiro128** (seed %i)',
  (seed) => {
    const words = xoshiro(mixed(BigInt(seed)));
    const { uniform } = randomStream(seed);
    for (let i = 0; i < 10_000; i++)
      if (uniform() !== (Number(words.next().value) + 0.5) / 2 ** 32) expect.fail(`word ${i}`);
  },
);

test.each([1, 2, 3, 5, 64, 71, 2001])('χ² of ν = %i has the mean ν and the variance 2·ν', (nu) => {
  const { chiSquare } = randomStream(nu);
  const count = nu > 1000 ? 2000 : 40_000;
  const drawn = Float64Array.from({ length: count }, () => chiSquare(nu));
  const mean = drawn.reduce((sum, x) => sum + x, 0) / count;
  const variance = drawn.reduce((sum, x) => sum + (x - mean) ** 2, 0) / count;
  expect(Math.abs(mean - nu)).toBeLessThan(4 * Math.sqrt((2 * nu) / count));
  // The fourth central moment is 12·ν·(ν + 4).
  expect(Math.abs(variance - 2 * nu)).toBeLessThan(
    4 * Math.sqrt((12 * nu * (nu + 4) - 4 * nu ** 2) / count),
  );
});

test('far tails of the normal numbers are as full as they should be, on both sides', () => {
  // Beyond 3.44 the numbers come by another way.
  const { normal } = randomStream(31);
  const count = 2_000_000;
  const edges = [3.2, 3.442619855899, 3.6, 3.9, 4.3];
  const beyond = { low: edges.map(() => 0), high: edges.map(() => 0) };
  for (let i = 0; i < count; i++) {
    const x = normal();
    const side = x < 0 ? beyond.low : beyond.high;
    for (const [index, edge] of edges.entries())
      if (Math.abs(x) > edge) side[index] = (side[index] ?? 0) + 1;
  }
  for (const [index, edge] of edges.entries()) {
    const wanted = count * normalBelow(-edge);
    for (const side of [beyond.low, beyond.high])
      expect(Math.abs((side[index] ?? 0) - wanted), `beyond ${edge}`).toBeLessThan(
        4 * Math.sqrt(wanted),
      );
  }
});
