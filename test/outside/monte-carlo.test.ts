import { describe, expect, test } from 'vitest';
import { drawDistribution } from '../../src/measure/monte-carlo.ts';
import { randomStream } from '../../src/measure/random.ts';
import { spreadOf } from '../../src/measure/uncertain.ts';
import { source, value } from '../measure/source.ts';
import { studentDraw } from '../measure/student-draw.ts';
import { normalBelow, studentBelow } from './distributions.ts';

const MILLION = 1_000_000;

// JCGM 101:2008, 9.2.2 to 9.2.4: the sum of four quantities of mean 0. Intervals at 95 % as printed there for the GUM and for the
// analytic or drawn result, and exact: normal 2·1.959964; rectangular 2√3·(2 − (3/5)^¼); the last by convolution.
describe('JCGM 101:2008, the additive model', () => {
  const cases = [
    {
      clause: '9.2.2, four normal',
      shape: 'normal',
      last: 1,
      ...{ u: 2, gum: 3.92, printed: 3.92, exact: 3.919927969, within: 0.02 },
    },
    {
      clause: '9.2.3, four rectangular of one width',
      shape: 'rectangular',
      last: 1,
      ...{ u: 2, gum: 3.92, printed: 3.88, exact: 3.879406741, within: 0.02 },
    },
    {
      clause: '9.2.4, four rectangular, one ten times as wide',
      shape: 'rectangular',
      last: 10,
      ...{ u: Math.sqrt(103), gum: 19.9, printed: 17, exact: 17.015814, within: 0.1 },
    },
  ] as const;

  test.each(cases)('$clause: ± $printed by draws, where the GUM gives ± $gum', (item) => {
    const { shape, last, u, gum, printed, exact, within } = item;
    const inputs = [1, 1, 1, last].map((size, index) =>
      value(0, source(`x${index}`, size, { shape })),
    );
    const spread = spreadOf(inputs.flatMap(({ components }) => components));
    expect(spread.u).toBeCloseTo(u, 12);
    expect(Math.abs((spread.U ?? 0) - gum)).toBeLessThan(last === 1 ? 0.005 : 0.05);

    const drawn = drawDistribution(inputs, (x) => x.reduce((sum, one) => sum + one, 0), {
      seed: 101,
      draws: MILLION,
    });
    expect(Math.abs(drawn.u / u - 1)).toBeLessThan(0.005);
    expect(Math.abs(drawn.mean)).toBeLessThan((4 * u) / 1000);
    for (const end of [-drawn.low, drawn.high]) {
      expect(Math.abs(end - printed)).toBeLessThan(within);
      expect(Math.abs(end - exact)).toBeLessThan(within);
    }
    expect(Math.abs(drawn.low + exact)).toBeLessThan(4 * drawn.lowError);
    expect(Math.abs(drawn.high - exact)).toBeLessThan(4 * drawn.highError);
  });
});

/** χ² of a million numbers in bins against the exact distribution, in standard deviations from what chance gives. */
function excess(
  next: () => number,
  below: (x: number) => number,
  edges: readonly number[],
): number {
  const counts = new Float64Array(edges.length + 1);
  for (let i = 0; i < MILLION; i++) {
    const x = next();
    let bin = 0;
    let past = edges.length;
    while (bin < past) {
      const middle = (bin + past) >> 1;
      if (x < (edges[middle] as number)) past = middle;
      else bin = middle + 1;
    }
    counts[bin] = (counts[bin] as number) + 1;
  }
  const ends = [0, ...edges.map(below), 1];
  const chi = counts.reduce((sum, count, bin) => {
    const want = MILLION * ((ends[bin + 1] as number) - (ends[bin] as number));
    return sum + (count - want) ** 2 / want;
  }, 0);
  return (chi - edges.length) / Math.sqrt(2 * edges.length);
}

const evenly = (from: number, to: number, count: number) =>
  Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);

describe('the random numbers', () => {
  const seeds = [1, 2, 20_080_501, 0xffffffff];

  test.each(seeds)('are even between 0 and 1, ends not included (seed %i)', (seed) => {
    const { uniform } = randomStream(seed);
    let [least, most] = [1, 0];
    const next = () => {
      const x = uniform();
      [least, most] = [Math.min(least, x), Math.max(most, x)];
      return x;
    };
    expect(Math.abs(excess(next, (x) => x, evenly(0.005, 0.995, 198)))).toBeLessThan(4);
    expect(least).toBeGreaterThan(0);
    expect(most).toBeLessThan(1);
  });

  test.each(seeds)('are normal, tails included (seed %i)', (seed) => {
    const { normal } = randomStream(seed);
    expect(Math.abs(excess(normal, normalBelow, evenly(-4, 4, 400)))).toBeLessThan(4);
  });

  test('have the moments of a normal distribution: 0, 1, 0, 3', () => {
    const { normal } = randomStream(3);
    const sums = [0, 0, 0, 0];
    for (let i = 0; i < MILLION; i++) {
      const x = normal();
      for (let power = 1; power <= 4; power++)
        sums[power - 1] = (sums[power - 1] ?? 0) + x ** power;
    }
    // Standard errors of the four: √1, √2, √15, √96 over 1000.
    const errors = [1, 2, 15, 96].map((variance) => Math.sqrt(variance / MILLION));
    for (const [power, moment] of [0, 1, 0, 3].entries())
      expect(Math.abs((sums[power] ?? 0) / MILLION - moment)).toBeLessThan(
        4 * (errors[power] ?? 0),
      );
  });

  test('do not hang together from one to the next, in value nor in size', () => {
    const { normal } = randomStream(5);
    let [before, products, sizes] = [normal(), 0, 0];
    for (let i = 0; i < MILLION; i++) {
      const x = normal();
      products += x * before;
      sizes += (x * x - 1) * (before * before - 1);
      before = x;
    }
    expect(Math.abs(products / MILLION)).toBeLessThan(4 / 1000);
    expect(Math.abs(sizes / MILLION)).toBeLessThan((4 * 2) / 1000);
  });

  test.each([1, 2, 3, 4, 7, 9])('are Student’s t with ν = %i', (nu) => {
    const stream = randomStream(nu);
    const found = excess(
      () => studentDraw(stream, nu),
      (t) => studentBelow(t, nu),
      evenly(-6, 6, 300),
    );
    expect(Math.abs(found)).toBeLessThan(4);
  });

  test('would be caught if they were nearly normal: sums of twelve even ones, or tails cut off', () => {
    const { uniform, normal } = randomStream(12);
    const twelve = () => Array.from({ length: 12 }, uniform).reduce((sum, x) => sum + x, -6);
    const cut = () => {
      for (;;) {
        const x = normal();
        if (Math.abs(x) < 3.442619855899) return x;
      }
    };
    const edges = evenly(-4, 4, 400);
    expect(excess(twelve, normalBelow, edges)).toBeGreaterThan(10);
    expect(excess(cut, normalBelow, edges)).toBeGreaterThan(10);
  });
});
