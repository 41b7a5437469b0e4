import type { DrawnInput } from '../../src/measure/drawn-input.ts';
import type { DrawOptions } from '../../src/measure/monte-carlo.ts';
import { type RandomStream, randomStream } from '../../src/measure/random.ts';
import { studentDraw } from './student-draw.ts';

const BINS = 1 << 16;
const PILOT = 4000;

/**
 * Propagates distributions (JCGM 101:2008 clause 7) by independent draws and nothing else, to hold steered ones against. Streaming: draws are counted in fine bins whose range
 * a pilot run sets, so memory does not grow with their number; what falls outside is kept in lists of its own.
 */
export function plainDraws(
  inputs: readonly DrawnInput[],
  model: (values: Float64Array) => number,
  { seed, draws }: Pick<DrawOptions, 'seed' | 'draws'>,
) {
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
  const tallied = { counts, from, perBin, below, above };
  const end = (p: number) => {
    // The number of draws below the end is binomial, which needs no knowledge of the distribution.
    const spread = Math.sqrt(p * (1 - p) * draws);
    const [least, at, most] = [-spread, 0, spread].map((off) =>
      quantileOf(p * draws + off, tallied),
    );
    return { at: at as number, error: ((most as number) - (least as number)) / 2 };
  };
  const [low, high] = [end(0.025), end(0.975)];
  const mean = sum / draws;
  return {
    mean: middle + mean,
    u: Math.sqrt((squares - draws * mean * mean) / (draws - 1)),
    low: low.at,
    high: high.at,
    lowError: low.error,
    highError: high.error,
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

/**
 * Makes a function that fills a row of values with one draw; sources with one key are drawn once, groups of Student's t share their spread.
 * It is written out and compiled for these very inputs (numbers and positions only), since a loop over tables took twice as long.
 */
function drawer(
  inputs: readonly DrawnInput[],
  random: RandomStream,
): (values: Float64Array) => void {
  const sources = [
    ...new Map(
      inputs.flatMap(({ components }) => components).map((component) => [component.key, component]),
    ).values(),
  ];
  const groups = Map.groupBy(sources, ({ group }) => group);
  const shared = [...groups]
    .filter(([, group]) => group.length > 1 && isStudent(group[0]))
    .map(([name]) => name);
  const spreads = shared.map((name, index) => {
    const nu = Number(groups.get(name)?.[0]?.nu);
    return `const q${index} = Math.sqrt(random.chiSquare(${nu}) / ${nu});`;
  });
  const draws = sources.map((source, index) => `const z${index} = ${drawOf(source, shared)};`);
  const position = new Map(sources.map(({ key }, index) => [key, index]));
  const sums = inputs.map(({ value, components }, index) => {
    const terms = components.map(({ key, u }) => ` + ${Number(u)} * z${position.get(key)}`);
    return `values[${index}] = ${Number(value)}${terms.join('')};`;
  });
  const body = `return (values) => { ${[...spreads, ...draws, ...sums].join(' ')} };`;
  const make = new Function('random', 'student', body);
  return make(random, studentDraw) as (values: Float64Array) => void;
}

type Source = DrawnInput['components'][number];

function isStudent(source: Source | undefined): boolean {
  return source !== undefined && source.shape === 'student' && Number.isFinite(source.nu);
}

/** A standardised draw of a source, as program text. */
function drawOf(source: Source, shared: readonly string[]): string {
  if (source.shape === 'rectangular') return `${Math.sqrt(3)} * (2 * random.uniform() - 1)`;
  if (!isStudent(source)) return 'random.normal()';
  const spread = shared.indexOf(source.group);
  return spread < 0 ? `student(random, ${Number(source.nu)})` : `random.normal() / q${spread}`;
}
