import { createHash } from 'node:crypto';
import { fromBaseUnit } from '../units/unit.ts';
import { type Drawn, type DrawnInput, drawDistribution } from './monte-carlo.ts';
import type { Interval } from './spec-value.ts';
import { type Spread, spreadOf, type Uncertain } from './uncertain.ts';
import { decimalsFor } from './uncertainty.ts';
import type { Worked } from './worked.ts';

/** Draws of a cross-check; JCGM 101 7.2.2 asks for at least 10⁴ times 1/(1 − p), and takes 10⁶ as enough for two digits. */
export const DRAWS = 1_000_000;

/** Raise it when the draws would come out otherwise, so that nothing old is taken for new. */
const RECIPE = 2;

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
 * out of worked-out values is drawn whole.
 */
interface Model {
  readonly leaves: readonly DrawnInput[];
  readonly steps: readonly {
    readonly value: (values: ArrayLike<number>) => number;
    readonly from: readonly number[];
  }[];
}

function modelOf(worked: Worked): Model {
  const leaves: DrawnInput[] = [];
  const steps: { value: (values: ArrayLike<number>) => number; from: number[] }[] = [];
  const places = new Map<object, { leaf: number } | { step: number }>();
  const place = (item: Worked): { step: number } => {
    const from = item.recipe.inputs.map((input, index) => {
      const source = item.sources[index];
      if (source?.kind === 'worked') return places.get(source) ?? place(source);
      const key = source ?? input;
      const known = places.get(key);
      if (known) return known;
      leaves.push(item.inputs[index] as Uncertain);
      const found = { leaf: leaves.length - 1 };
      places.set(key, found);
      return found;
    });
    steps.push({
      value: item.recipe.ready.value,
      from: from.map((where) => ('leaf' in where ? where.leaf : -1 - where.step)),
    });
    const found = { step: steps.length - 1 };
    places.set(item, found);
    return found;
  };
  place(worked);
  return { leaves, steps };
}

/** Names a cross-check by everything that decides its result. */
export function crossCheckKey(worked: Worked): string {
  const { leaves, steps } = modelOf(worked);
  const formulas = steps.map(({ from }, index) => [from, textsOf(worked)[index]]);
  const numbers = leaves.map(({ value, components }) => [
    value,
    components.map(({ key, group, u, nu, shape }) => [key, group, u, String(nu), shape]),
  ]);
  return createHash('sha256')
    .update(JSON.stringify([RECIPE, DRAWS, formulas, numbers]))
    .digest('hex')
    .slice(0, 32);
}

function textsOf(worked: Worked): string[] {
  const inner = worked.sources.flatMap((source) =>
    source?.kind === 'worked' ? textsOf(source) : [],
  );
  return [...new Set([...inner, `${worked.recipe.spec.id}: ${worked.recipe.ready.text}`])];
}

/** Draws a worked-out value and compares the interval of the GUM with what comes out (JCGM 101:2008 clause 8). */
export function crossCheck(worked: Worked): CrossCheck {
  const { leaves, steps } = modelOf(worked);
  const results = new Float64Array(steps.length);
  const rows = steps.map(({ from }) => new Float64Array(from.length));
  const model = (values: Float64Array) => {
    for (let s = 0; s < steps.length; s++) {
      const { value, from } = steps[s] as Model['steps'][number];
      const row = rows[s] as Float64Array;
      for (let i = 0; i < from.length; i++) {
        const where = from[i] as number;
        row[i] = where >= 0 ? (values[where] as number) : (results[-1 - where] as number);
      }
      results[s] = value(row);
    }
    return results[steps.length - 1] as number;
  };
  const seed = Number.parseInt(crossCheckKey(worked).slice(0, 8), 16);
  const drawn = drawDistribution(leaves, model, { seed, draws: DRAWS });
  return compare(worked.base.value, spreadOf(worked.base.components), drawn);
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
  if (worked.u === undefined) return undefined;
  const check = checks.get(crossCheckKey(worked));
  if (check === undefined || check.agrees) return undefined;
  const [a, b] = [fromBaseUnit(check.low, worked.unit), fromBaseUnit(check.high, worked.unit)];
  return { low: Math.min(a, b), high: Math.max(a, b) };
}
