import {
  normalQuantile,
  type Quantile,
  rectangularQuantile,
  studentQuantile,
} from './quantiles.ts';
import type { RandomStream } from './random.ts';
import type { Component } from './uncertain.ts';

/** Draws of one block. */
export const BLOCK = 4096;

/** A source, as far as it decides what is drawn of it. */
type Drawn = Pick<Component, 'u' | 'nu' | 'shape'>;

/** Whether a source is drawn from Student's t. */
export function isStudent({ shape, nu }: Pick<Drawn, 'shape' | 'nu'>): boolean {
  return shape === 'student' && Number.isFinite(nu);
}

/**
 * Fills a row with a block of standardised draws of one source in random order: one in each of equally likely slices, so that the
 * row as a whole is spread as evenly as the distribution (Latin hypercube sampling, McKay et al. 1979). The row holds the block twice,
 * so that a block can be read from any place.
 */
export function fillEvenly(row: Float64Array, edges: SliceEdges, random: RandomStream): void {
  const { at, quantile } = edges;
  for (let slice = 0; slice < BLOCK; slice++) {
    // Put at a random place among those before it (Durstenfeld's shuffle, inside out); what is left of the number is as good as a new one.
    const drawn = random.uniform() * (slice + 1);
    const place = Math.floor(drawn);
    const part = slice === 0 ? drawn : drawn - place;
    const outer = slice === 0 || slice === BLOCK - 1;
    const from = at[slice] as number;
    row[slice] = row[place] as number;
    row[place] = outer
      ? quantile((slice + part) / BLOCK)
      : from + part * ((at[slice + 1] as number) - from);
  }
  row.copyWithin(BLOCK, 0, BLOCK);
}

/** Ends of equally likely slices; within one, draws are even, except in the outermost, which follow the quantile. */
export interface SliceEdges {
  readonly at: Float64Array;
  readonly quantile: Quantile;
}

const known = new Map<string, SliceEdges>();

/** The slices of a source's distribution; of a Student's t that is put together from a normal number and a shared spread, of that number. */
export function slicesOf(source: Pick<Drawn, 'shape' | 'nu'>, shared: boolean): SliceEdges {
  const student = isStudent(source) && !shared;
  const name = student ? `t ${source.nu}` : source.shape === 'rectangular' ? 'even' : 'normal';
  const found = known.get(name) ?? makeSlices(quantileOf(name, source.nu));
  known.set(name, found);
  return found;
}

function quantileOf(name: string, nu: number): Quantile {
  if (name === 'even') return rectangularQuantile;
  return name === 'normal' ? normalQuantile : studentQuantile(nu);
}

function makeSlices(quantile: Quantile): SliceEdges {
  const at = new Float64Array(BLOCK + 1);
  // The distributions are even, so half of the ends will do; the outermost two are never asked for.
  for (let slice = BLOCK / 2 - 1; slice > 0; slice--) {
    at[slice] = quantile(slice / BLOCK, at[slice + 1]);
    at[BLOCK - slice] = -(at[slice] as number);
  }
  return { at, quantile };
}
