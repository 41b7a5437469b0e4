import { BLOCK, fillEvenly, isStudent, type SliceEdges, slicesOf } from './even-draws.ts';
import type { DrawnInput } from './monte-carlo.ts';
import type { RandomStream } from './random.ts';

/** Blocks that are made of one set of rows before new ones are drawn. */
export const TURNS = 16;

/** A block of draws of a model, and of the linear part of the same draws (0 where there is none). */
export interface DrawBlock {
  readonly y: Float64Array;
  readonly linear: Float64Array;
}

/** What is drawn: the inputs, the model over them, and its slope for each of them where that is known. */
export interface Drawable {
  readonly inputs: readonly DrawnInput[];
  readonly model: (values: Float64Array) => number;
  readonly slopes: readonly number[] | undefined;
}

type Source = DrawnInput['components'][number];

/** Part of an input: so many times the draws of a row. */
interface Term {
  readonly row: Row;
  readonly by: number;
}

/** A source with its row of draws. */
interface Row {
  readonly slices: SliceEdges;
  readonly draws: Float64Array;
  /** Where in the row this block begins. */
  from: number;
  /** What the draws are to be multiplied by, where a group of Student's t has its spread in common. */
  readonly spread: Spread | undefined;
}

interface Spread {
  readonly nu: number;
  readonly factors: Float64Array;
}

/**
 * Makes blocks of draws, always into the same arrays. Random numbers are what a draw costs, so a row of them for each source is used
 * for several blocks, each time turned against the other rows by random steps: what comes together is new every time, and what one row
 * alone adds is even by its making, so the blocks don't hang together in the error.
 */
export function blockDrawer(
  { inputs, model, slopes = inputs.map(() => 0) }: Drawable,
  random: RandomStream,
): () => DrawBlock {
  const block = { y: new Float64Array(BLOCK), linear: new Float64Array(BLOCK) };
  const columns = inputs.map(() => new Float64Array(BLOCK));
  const rows = rowsOf(inputs);
  const spreads = [...new Set([...rows.values()].flatMap(({ spread }) => spread ?? []))];
  const terms = inputs.map(({ components }) =>
    components
      .filter(({ u }) => u !== 0)
      .map(({ key, u }) => ({ row: rows.get(key) as Row, by: u })),
  );
  const centre = Float64Array.from(inputs, ({ value }) => value);
  let turn = 0;
  return () => {
    if (turn++ % TURNS === 0)
      for (const { draws, slices } of rows.values()) fillEvenly(draws, slices, random);
    for (const row of rows.values()) row.from = Math.floor(random.uniform() * BLOCK);
    for (const { nu, factors } of spreads)
      for (let i = 0; i < BLOCK; i++) factors[i] = Math.sqrt(nu / random.chiSquare(nu));
    for (const [k, column] of columns.entries())
      fillColumn(column, centre[k] as number, terms[k] as Term[]);
    fillBlock(block, columns, { model, slopes: Float64Array.from(slopes), centre });
    return block;
  };
}

// Column by column, since these loops are compiled once for all models: a loop written for each model took longer to compile than to run.

function fillColumn(column: Float64Array, value: number, terms: readonly Term[]): void {
  const plain = terms.filter(({ row }) => row.spread === undefined);
  // Most inputs have up to three sources, which go in one sweep.
  const [a = NOTHING, b = NOTHING, c = NOTHING, ...more] = plain;
  const { draws: p, from: pFrom } = a.row;
  const { draws: q, from: qFrom } = b.row;
  const { draws: r, from: rFrom } = c.row;
  for (let i = 0; i < BLOCK; i++)
    column[i] =
      value +
      a.by * (p[pFrom + i] as number) +
      b.by * (q[qFrom + i] as number) +
      c.by * (r[rFrom + i] as number);
  for (const { row, by } of more)
    for (let i = 0; i < BLOCK; i++)
      column[i] = (column[i] as number) + by * (row.draws[row.from + i] as number);
  for (const { row, by } of terms) {
    if (row.spread === undefined) continue;
    const { factors } = row.spread;
    for (let i = 0; i < BLOCK; i++)
      column[i] =
        (column[i] as number) + by * (row.draws[row.from + i] as number) * (factors[i] as number);
  }
}

function fillBlock(
  { y, linear }: DrawBlock,
  columns: readonly Float64Array[],
  {
    model,
    slopes,
    centre,
  }: Pick<Drawable, 'model'> & { slopes: Float64Array; centre: Float64Array },
): void {
  const values = new Float64Array(columns.length);
  linear.fill(0);
  for (const [k, column] of columns.entries()) {
    const [slope, middle] = [slopes[k] as number, centre[k] as number];
    for (let i = 0; i < BLOCK; i++)
      linear[i] = (linear[i] as number) + slope * ((column[i] as number) - middle);
  }
  for (let i = 0; i < BLOCK; i++) {
    for (let k = 0; k < columns.length; k++) values[k] = (columns[k] as Float64Array)[i] as number;
    y[i] = model(values);
  }
}

/** Each source once, by its key, whatever it moves. */
function rowsOf(inputs: readonly DrawnInput[]): ReadonlyMap<string, Row> {
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

const NOTHING: Term = {
  row: {
    slices: slicesOf({ shape: 'rectangular', nu: Number.POSITIVE_INFINITY }, false),
    ...{ draws: new Float64Array(2 * BLOCK), from: 0, spread: undefined },
  },
  by: 0,
};
