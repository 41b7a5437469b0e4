import type { DrawnInput } from './drawn-input.ts';
import { BLOCK, fillEvenly } from './even-draws.ts';
import type { RandomStream } from './random.ts';
import { NOTHING, type Row, rowsOf, type Term } from './source-rows.ts';

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
