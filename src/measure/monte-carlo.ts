import { type RandomStream, randomStream } from './random.ts';
import type { Component } from './uncertain.ts';

/** A value of the model that is drawn: its mean and the sources it is moved by. */
export interface DrawnInput {
  readonly value: number;
  readonly components: readonly Pick<Component, 'key' | 'group' | 'u' | 'nu' | 'shape'>[];
}

/** What came of the draws. */
export interface Drawn {
  readonly mean: number;
  readonly u: number;
  /** Ends of the probabilistically symmetric 95 % interval (JCGM 101 7.7). */
  readonly low: number;
  readonly high: number;
}

/** How the draws are made. */
export interface DrawOptions {
  readonly seed: number;
  readonly draws: number;
}

const BINS = 1 << 16;
const PILOT = 4000;

/**
 * Propagates distributions (JCGM 101:2008 clause 7) by seeded draws. Streaming: draws are counted in fine bins whose range
 * a pilot run sets, so memory does not grow with their number; what falls outside is kept in lists of its own.
 */
export function drawDistribution(
  inputs: readonly DrawnInput[],
  model: (values: Float64Array) => number,
  { seed, draws }: DrawOptions,
): Drawn {
  const random = randomStream(seed);
  const draw = drawer(inputs, random);
  const values = new Float64Array(inputs.length);
  const next = () => {
    draw(values);
    return model(values);
  };

  const pilot = Float64Array.from({ length: PILOT }, next).sort();
  const [quarter, middle, threeQuarters] = [0.25, 0.5, 0.75].map(
    (p) => pilot[Math.floor(p * PILOT)] as number,
  ) as [number, number, number];
  const reach = 12 * Math.max(threeQuarters - quarter, Math.abs(middle) * 1e-15, Number.MIN_VALUE);
  const from = middle - reach;
  const perBin = (2 * reach) / BINS;
  const counts = new Uint32Array(BINS);
  const below: number[] = [];
  const above: number[] = [];
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < draws; i++) {
    const y = next();
    const offset = y - middle;
    sum += offset;
    squares += offset * offset;
    const bin = Math.floor((y - from) / perBin);
    if (bin < 0) below.push(y);
    else if (bin >= BINS) above.push(y);
    else counts[bin] = (counts[bin] as number) + 1;
  }
  below.sort((a, b) => a - b);
  above.sort((a, b) => a - b);
  const quantile = (p: number) => quantileOf(p * draws, { counts, from, perBin, below, above });
  const mean = sum / draws;
  return {
    mean: middle + mean,
    u: Math.sqrt((squares - draws * mean * mean) / (draws - 1)),
    low: quantile(0.025),
    high: quantile(0.975),
  };
}

interface Tallied {
  readonly counts: Uint32Array;
  readonly from: number;
  readonly perBin: number;
  readonly below: readonly number[];
  readonly above: readonly number[];
}

function quantileOf(rank: number, { counts, from, perBin, below, above }: Tallied): number {
  if (rank < below.length) return below[Math.floor(rank)] as number;
  let passed = below.length;
  for (let bin = 0; bin < counts.length; bin++) {
    const count = counts[bin] as number;
    if (passed + count >= rank && count > 0) return from + (bin + (rank - passed) / count) * perBin;
    passed += count;
  }
  return (
    above[Math.min(above.length - 1, Math.floor(rank - passed))] ?? from + counts.length * perBin
  );
}

/** Fills a row of values with one draw; sources with one key are drawn once, groups of Student's t share their spread. */
function drawer(
  inputs: readonly DrawnInput[],
  random: RandomStream,
): (values: Float64Array) => void {
  const keys = [
    ...new Map(
      inputs.flatMap(({ components }) => components).map((component) => [component.key, component]),
    ).values(),
  ];
  const groupSizes = Map.groupBy(keys, ({ group }) => group);
  const groups = [...new Set(keys.map(({ group }) => group))];
  const sources = keys.map(({ group, nu, shape }) => ({
    shape,
    nu,
    group: groups.indexOf(group),
    alone: (groupSizes.get(group)?.length ?? 0) === 1,
  }));
  const index = new Map(keys.map(({ key }, position) => [key, position]));
  // Of every input: which sources move it, and by how much.
  const means = Float64Array.from(inputs, ({ value }) => value);
  const which = inputs.map(({ components }) =>
    Uint16Array.from(components, ({ key }) => index.get(key) ?? 0),
  );
  const weights = inputs.map(({ components }) => Float64Array.from(components, ({ u }) => u));
  const z = new Float64Array(sources.length);
  const spread = new Float64Array(groups.length);
  const ROOT3 = Math.sqrt(3);

  return (values) => {
    spread.fill(0);
    for (let s = 0; s < sources.length; s++) {
      const { shape, nu, group, alone } = sources[s] as (typeof sources)[number];
      if (shape === 'rectangular') z[s] = ROOT3 * (2 * random.uniform() - 1);
      else if (shape === 'normal' || !Number.isFinite(nu)) z[s] = random.normal();
      else if (alone) z[s] = random.student(nu);
      else z[s] = random.normal() / sharedSpread(spread, group, nu, random);
    }
    for (let i = 0; i < values.length; i++) {
      const sourcesOfInput = which[i] as Uint16Array;
      const weightsOfInput = weights[i] as Float64Array;
      let value = means[i] as number;
      for (let s = 0; s < sourcesOfInput.length; s++)
        value += (weightsOfInput[s] as number) * (z[sourcesOfInput[s] as number] as number);
      values[i] = value;
    }
  };
}

/** √(χ²/ν) of a group, drawn once for each draw. */
function sharedSpread(
  spread: Float64Array,
  group: number,
  nu: number,
  random: RandomStream,
): number {
  const drawn = spread[group] as number;
  if (drawn > 0) return drawn;
  let squares = 0;
  for (let i = 0; i < nu; i++) squares += random.normal() ** 2;
  const root = Math.sqrt(squares / nu);
  spread[group] = root;
  return root;
}
