import type { DrawnInput } from './drawn-input.ts';
import { BLOCK, isStudent, type SliceEdges, slicesOf } from './even-draws.ts';

type Source = DrawnInput['components'][number];

/** Part of an input: so many times the draws of a row. */
export interface Term {
  readonly row: Row;
  readonly by: number;
}

/** A source with its row of draws. */
export interface Row {
  readonly slices: SliceEdges;
  readonly draws: Float64Array;
  /** Where in the row this block begins. */
  from: number;
  /** What the draws are to be multiplied by, where a group of Student's t has its spread in common. */
  readonly spread: Spread | undefined;
}

/** The spread of a group of Student’s t, as what a normal number is multiplied by. */
export interface Spread {
  readonly nu: number;
  readonly factors: Float64Array;
}

/** Each source once, by its key, whatever it moves. */
export function rowsOf(inputs: readonly DrawnInput[]): ReadonlyMap<string, Row> {
  const moving = inputs.flatMap(({ components }) => components.filter(({ u }) => u !== 0));
  const sources = new Map(moving.map((component) => [component.key, component]));
  const spreads = sharedSpreads([...sources.values()]);
  const rows = [...sources.values()].map((source, index) => {
    const spread = isStudent(source) ? spreads.get(source.group) : undefined;
    return {
      slices: slicesOf(source, spread !== undefined),
      draws: spareRow(index),
      from: 0,
      spread,
    };
  });
  return new Map([...sources.keys()].map((key, index) => [key, rows[index] as Row]));
}

/** Groups of Student's t that have their spread in common. */
function sharedSpreads(sources: readonly Source[]): ReadonlyMap<string, Spread> {
  const groups = Map.groupBy(sources.filter(isStudent), ({ group }) => group);
  return new Map(
    [...groups]
      .filter(([, { length }]) => length > 1)
      .map(([name, [one]]) => [name, { nu: Number(one?.nu), factors: new Float64Array(BLOCK) }]),
  );
}

/** Rows of the drawer before, since that is done with when the next begins, and big arrays are dear to throw away. */
function spareRow(index: number): Float64Array {
  const row = spare[index] ?? new Float64Array(2 * BLOCK);
  spare[index] = row;
  return row;
}

const spare: Float64Array[] = [];

/** Stands in for a source that is not there. */
export const NOTHING: Term = {
  row: {
    slices: slicesOf({ shape: 'rectangular', nu: Number.POSITIVE_INFINITY }, false),
    ...{ draws: new Float64Array(2 * BLOCK), from: 0, spread: undefined },
  },
  by: 0,
};
