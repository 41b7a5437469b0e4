import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/measure/random.ts';
import { drawMinutes } from '../../src/plan/forecast-draws.ts';
import { correlation, rangeOf } from '../../src/plan/forecast-summary.ts';
import type { ForecastPhase } from '../../src/plan/forecast-types.ts';
import { likelyRatios } from '../../src/plan/habit.ts';
import { inOrder } from '../../src/plan/order.ts';
import { pertQuantiles, quantileAt } from '../../src/plan/pert-quantiles.ts';
import { estimate } from '../../src/plan/three-point.ts';
import { type Draw, momentsOf, phase, runWith } from '../plan/drawn.ts';

const DRAWS = 100_000;

/** Normal, in minutes or days. */
const normal =
  (mean: number, deviation: number): Draw =>
  (stream) =>
    mean + deviation * stream.normal();

/** Four standard errors of a mean; a seed that passes always passes. */
const near = (deviation: number) => (4 * deviation) / Math.sqrt(DRAWS);

describe('drawn finishes have the closed form', () => {
  test('of a sum of normals: phases one after another', () => {
    const phases = [phase('a', 0), phase('b', 0, 'a'), phase('c', 0, 'b', 'a')];
    const minutes = [normal(600, 60), normal(900, 120), normal(300, 40)];
    const { finish } = runWith(phases, [], { draws: DRAWS, minutes, ends: [] });
    // Sixty minutes a day: 1800 minutes are 30 days, and √(60² + 120² + 40²) = 140 minutes 2⅓ days.
    const { mean, deviation } = momentsOf(finish);
    expect(Math.abs(mean - 30)).toBeLessThan(near(140 / 60));
    expect(Math.abs(deviation / (140 / 60) - 1)).toBeLessThan(4 / Math.sqrt(2 * DRAWS));
    const { low, middle, high } = rangeOf(finish);
    // 1.2815515655 standard deviations, and the standard error of a quantile: √(p(1 − p))/φ(z).
    for (const [found, z, error] of [
      [low, -1.2815515655, 1.71],
      [middle, 0, 1.2533],
      [high, 1.2815515655, 1.71],
    ] as const)
      expect(Math.abs(found - 30 - (z * 140) / 60)).toBeLessThan(near((error * 140) / 60));
  });

  test('of a sum, too, when phases could go on side by side: there is one builder', () => {
    const phases = [phase('a', 0), phase('b', 0), phase('c', 0)];
    const minutes = [normal(600, 60), normal(900, 120), normal(300, 40)];
    const { finish } = runWith(phases, [], { draws: DRAWS, minutes, ends: [] });
    expect(Math.abs(momentsOf(finish).mean - 30)).toBeLessThan(near(140 / 60));
  });

  test('of the greater of two normals: 1/√π above the mean, with variance 1 − 1/π', () => {
    // Clark (1961), for two of the same kind that are independent.
    const waits = ['parts', 'weather'].map((id) => ({ id, phases: ['a'], from: 0, to: 0 }));
    const ends = [normal(100, 1), normal(100, 1)];
    const { finish, waitDecides } = runWith([phase('a', 0)], waits, {
      ...{ draws: DRAWS, minutes: [() => 0], ends },
    });
    const exact = Math.sqrt(1 - 1 / Math.PI);
    const { mean, deviation } = momentsOf(finish);
    expect(Math.abs(mean - 100 - 1 / Math.sqrt(Math.PI))).toBeLessThan(near(exact));
    expect(Math.abs(deviation / exact - 1)).toBeLessThan(4 / Math.sqrt(2 * DRAWS));
    for (const count of waitDecides) expect(Math.abs(count / DRAWS - 0.5)).toBeLessThan(near(0.5));
  });

  test('of the beta distribution behind three estimates', () => {
    for (const points of [
      { least: 5, likely: 8, most: 17 },
      { least: 0, likely: 0, most: 10 },
      { least: 4, likely: 10, most: 10 },
    ]) {
      const table = pertQuantiles(points);
      const { uniform } = randomStream(3);
      const drawn = Float64Array.from({ length: DRAWS }, () => quantileAt(table, uniform()));
      // Variance of a beta distribution with α + β = 6: (μ − a)(b − μ)/7.
      const { mean } = estimate(points);
      const exact = Math.sqrt(((mean - points.least) * (points.most - mean)) / 7);
      const found = momentsOf(drawn);
      expect(Math.abs(found.mean - mean)).toBeLessThan(near(exact) + 0.001);
      expect(Math.abs(found.deviation / exact - 1)).toBeLessThan(0.01);
    }
  });
});

describe('hours drawn from past ratios', () => {
  const ratios = [0.8, 0.9, 0.95, 1, 1.1, 1.15, 1.2, 1.3, 1.5, 1.9];
  const logs = ratios.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / 10;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  // One phase more, with the spread of a budget estimate of −20 to +30 %: ten degrees of freedom.
  const first = (Math.log(1.3) - Math.log(0.8)) / 2 / 1.2815515655;
  const spread = Math.sqrt((squares + first ** 2) / 10);

  const phases = ['a', 'b'].map((id) => phase(id, 100));
  const minutes = drawMinutes(phases, ratios, { seed: 5, draws: DRAWS }).map((total) =>
    Math.log(total / 100),
  );
  const [one, other] = [0, 1].map((index) => minutes.filter((_, place) => place % 2 === index)) as [
    Float64Array,
    Float64Array,
  ];

  // t for ten degrees of freedom, upper 10 %: 1.372, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
  const reach = 1.372 * spread * Math.sqrt(1 + 1 / 10);

  test('follow Student’s t with the factor √(1 + 1/n) of a prediction', () => {
    for (const drawn of [one, other]) {
      const { low, middle, high } = rangeOf(drawn);
      for (const [found, exact] of [
        [low, mean - reach],
        [middle, mean],
        [high, mean + reach],
      ] as const)
        expect(Math.abs(found - exact)).toBeLessThan(near(2 * spread));
    }
  });

  test('lean the same way: one part in n + 1 of their variance is common to all phases', () => {
    // Cov = σ²/n and Var = σ²(1 + 1/n).
    expect(Math.abs((correlation(one, other) ?? 0) - 1 / 11)).toBeLessThan(near(1.2));
  });

  test('have the range that is shown beside them', () => {
    const { low, high } = likelyRatios(ratios);
    expect(Math.log(low)).toBeCloseTo(mean - reach, 3);
    expect(Math.log(high)).toBeCloseTo(mean + reach, 3);
  });

  test('vary by no less than a budget estimate does where two phases came out alike', () => {
    // Two degrees of freedom, upper 10 %: 1.886 in the same table; half of the variance is that of the budget estimate.
    const alike = 1.886 * (first / Math.SQRT2) * Math.sqrt(1.5);
    expect(Math.log(likelyRatios([1.1, 1.1]).high / 1.1)).toBeCloseTo(alike, 3);
  });
});

const smallPhases = fc.array(
  fc.record({
    minutes: fc.integer({ min: 1, max: 600 }),
    until: fc.integer({ min: 0, max: 20 }),
    links: fc.uniqueArray(fc.integer({ min: 1, max: 4 }), { maxLength: 2 }),
    lag: fc.integer({ min: 0, max: 9 }),
  }),
  { minLength: 1, maxLength: 5 },
);

/** All orders of a few items. */
function ordersOf<Item>(items: readonly Item[]): Item[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item) =>
    ordersOf(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}

interface Small {
  readonly phases: readonly ForecastPhase[];
  readonly minutes: readonly number[];
  readonly untils: readonly number[];
}

/** Earliest finish in days of any order of work, found by trying all. */
function bestFinish({ phases, minutes, untils }: Small): number {
  let best = Number.POSITIVE_INFINITY;
  for (const order of ordersOf(phases.map((_, index) => index))) {
    const ends = new Map<string, number>();
    let end = 0;
    for (const index of order) {
      const { id, after } = phases[index] as ForecastPhase;
      const ready = after.map((link) => (ends.get(link.id) ?? Number.POSITIVE_INFINITY) + link.lag);
      end = Math.max(end, untils[index] ?? 0, ...ready) + (minutes[index] ?? 0) / 60;
      ends.set(id, end);
    }
    best = Math.min(best, end);
  }
  return best;
}

function smallOf(
  list: readonly { minutes: number; until: number; links: readonly number[] }[],
  lags: readonly number[],
): Small {
  return {
    phases: list.map(({ links, minutes }, index) =>
      phase(
        `p${index}`,
        minutes,
        ...links
          .filter((back) => back <= index)
          .map((back) => [`p${index - back}`, lags[index] ?? 0] as const),
      ),
    ),
    minutes: list.map(({ minutes }) => minutes),
    untils: list.map(({ until }) => until),
  };
}

function forecastOf({ phases, minutes, untils }: Small): number {
  const waits = phases.map(({ id }) => ({ id, phases: [id], from: 0, to: 0 }));
  const numberOf = new Map(phases.map(({ id }, index) => [id, index]));
  const fixed = (numbers: readonly number[]) => numbers.map((number) => () => number);
  // The network numbers its phases by itself: links go back only, but a phase without links comes before one with.
  const ordered = orderOf(phases);
  const { finish } = runWith(phases, waits, {
    draws: 1,
    minutes: fixed(ordered.map((id) => minutes[numberOf.get(id) ?? 0] ?? 0)),
    ends: fixed(untils),
  });
  return finish[0] as number;
}

function orderOf(phases: readonly ForecastPhase[]): string[] {
  const order = inOrder(phases);
  return order.kind === 'order' ? order.items.map(({ id }) => id) : [];
}

describe('one builder’s work against every order it could be done in', () => {
  test('ends as soon as in the best of them where links have no lag', () => {
    fc.assert(
      fc.property(smallPhases, (list) => {
        const small = smallOf(list, []);
        expect(forecastOf(small)).toBeCloseTo(bestFinish(small), 9);
      }),
    );
  });

  test('never ends later than in the best of them where links have lags', () => {
    fc.assert(
      fc.property(smallPhases, (list) => {
        const small = smallOf(
          list,
          list.map(({ lag }) => lag),
        );
        expect(forecastOf(small)).toBeLessThanOrEqual(bestFinish(small) + 1e-9);
      }),
    );
  });
});
