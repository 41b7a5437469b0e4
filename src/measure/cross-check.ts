import { createHash } from 'node:crypto';
import { compileSteps } from '../formula/compile.ts';
import { isFormula, parseFormula } from '../formula/parse.ts';
import { treeOf } from '../formula/tree.ts';
import { fromBaseUnit } from '../units/unit.ts';
import type { DrawnInput } from './drawn-input.ts';
import { type Drawn, drawDistribution } from './monte-carlo.ts';
import { type Spread, spreadOf, type Uncertain } from './uncertain.ts';
import { decimalsFor } from './uncertainty.ts';
import type { Interval } from './value-on-day.ts';
import type { Worked } from './worked.ts';

/** Independent draws that a cross-check is as good as; JCGM 101 7.2.2 asks for at least 10⁴ times 1/(1 − p), and takes 10⁶ as enough for two digits. */
export const DRAWS = 1_000_000;

/** Raise it when the draws would come out otherwise, so that nothing old is taken for new. */
const RECIPE = 4;

/** Standard errors of an end that chance is taken to explain: of a thousand ends, three go beyond. */
const CHANCE = 3;

/** What drawing says of a worked-out value, in its base unit. */
export interface CrossCheck extends Drawn {
  /** Numerical tolerance of JCGM 101 clause 8: half of the last of two significant digits of u. */
  readonly tolerance: number;
  /** Whether the interval of the GUM agrees with the drawn one: no end differs by more than the tolerance and what chance explains. */
  readonly agrees: boolean;
}

/** Cross-checks by the key of what went into them. */
export type CrossChecks = ReadonlyMap<string, CrossCheck>;

/**
 * A worked-out value flattened to what was read: the leaves to draw from, and the formulas over them in order, so that a value worked
 * out of worked-out values is drawn whole. Plain data, which can go to another thread.
 */
export interface DrawJob {
  readonly key: string;
  readonly leaves: readonly DrawnInput[];
  /** Formulas with what each name stands for: the n-th leaf, or the result of an earlier formula counted from −1 down. */
  readonly steps: readonly {
    readonly text: string;
    readonly names: readonly string[];
    readonly from: readonly number[];
  }[];
  /** Slope of the value for each leaf, by the law of propagation. */
  readonly slopes: readonly number[];
  readonly value: number;
  readonly spread: Spread;
}

/** Puts together what is to be drawn for a worked-out value, named by everything that decides the result. */
export function drawJob(worked: Worked): DrawJob {
  const leaves: DrawnInput[] = [];
  const steps: { text: string; names: readonly string[]; from: number[] }[] = [];
  const places = new Map<object, number>();
  const place = (item: Worked): number => {
    const from = item.recipe.inputs.map((input, index) => {
      const source = item.sources[index];
      const known = places.get(source ?? input);
      if (known !== undefined) return known;
      if (source?.kind === 'worked') return place(source);
      leaves.push(item.inputs[index] as Uncertain);
      places.set(source ?? input, leaves.length - 1);
      return leaves.length - 1;
    });
    steps.push({ text: item.recipe.ready.text, names: item.recipe.ready.names, from });
    places.set(item, -steps.length);
    return -steps.length;
  };
  place(worked);
  const slopes = new Array<number>(leaves.length).fill(0);
  const climb = (item: Worked, slope: number): void => {
    for (const [index, input] of item.recipe.inputs.entries()) {
      const source = item.sources[index];
      const along = slope * (item.base.budget[index]?.sensitivity ?? 0);
      if (source?.kind === 'worked') climb(source, along);
      else {
        const leaf = places.get(source ?? input) as number;
        slopes[leaf] = (slopes[leaf] as number) + along;
      }
    }
  };
  climb(worked, 1);
  return {
    key: keyOf(leaves, steps, slopes),
    leaves,
    steps,
    slopes,
    value: worked.base.value,
    spread: spreadOf(worked.base.components),
  };
}

function keyOf(
  leaves: readonly DrawnInput[],
  steps: DrawJob['steps'],
  slopes: readonly number[],
): string {
  const numbers = leaves.map(({ value, components }) => [
    value,
    components.map(({ key, group, u, nu, shape }) => [key, group, u, String(nu), shape]),
  ]);
  return createHash('sha256')
    .update(JSON.stringify([RECIPE, DRAWS, steps, numbers, slopes]))
    .digest('hex')
    .slice(0, 32);
}

/** Names a cross-check by everything that decides its result. */
export function crossCheckKey(worked: Worked): string {
  return drawJob(worked).key;
}

/** Draws a worked-out value and compares the interval of the GUM with what comes out (JCGM 101:2008 clause 8). */
export function crossCheck(worked: Worked): CrossCheck {
  return runDrawJob(drawJob(worked));
}

/** Makes the draws of a job, the same for the same job on every machine. */
export function runDrawJob({ key, leaves, steps, slopes, value, spread }: DrawJob): CrossCheck {
  const model = compileSteps(
    steps.map(({ text, names, from }) => {
      const formula = parseFormula(text, names);
      if (!isFormula(formula)) throw new Error(`this is our bug: ${text}: ${formula.wrong}`);
      const refs = new Map(names.map((name, index) => [name, refOf(from[index] as number)]));
      return { tree: treeOf(formula), refs };
    }),
  );
  const seed = Number.parseInt(key.slice(0, 8), 16);
  return compare(value, spread, drawDistribution(leaves, model, { seed, draws: DRAWS, slopes }));
}

function refOf(where: number): string {
  return where >= 0 ? `v[${where}]` : `r${-1 - where}`;
}

function compare(value: number, { u, U }: Spread, drawn: Drawn): CrossCheck {
  if (u === undefined || U === undefined) return { ...drawn, tolerance: 0, agrees: true };
  const tolerance = 0.5 * 10 ** -decimalsFor(u);
  // The ends of few repeats (Student's t) wander with the seed by more than the tolerance.
  const agrees =
    Math.abs(value - U - drawn.low) <= tolerance + CHANCE * drawn.lowError &&
    Math.abs(value + U - drawn.high) <= tolerance + CHANCE * drawn.highError;
  return { ...drawn, tolerance, agrees };
}

/** The drawn interval in the spec's unit, where it is the one to show; undefined where the GUM's agrees or nothing was drawn. */
export function intervalToShow(worked: Worked, checks: CrossChecks): Interval | undefined {
  if (worked.u === undefined || checks.size === 0) return undefined;
  const check = checks.get(crossCheckKey(worked));
  if (check === undefined || check.agrees) return undefined;
  const [a, b] = [fromBaseUnit(check.low, worked.unit), fromBaseUnit(check.high, worked.unit)];
  return { low: Math.min(a, b), high: Math.max(a, b) };
}
