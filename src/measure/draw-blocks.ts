import { BLOCK, fillEvenly, isStudent, slicesOf } from './even-draws.ts';
import type { DrawnInput } from './monte-carlo.ts';
import type { RandomStream } from './random.ts';

/** Blocks that are made of one set of rows before new ones are drawn. */
export const TURNS = 16;

/** A block of draws of a model, and of the linear part of the same draws (0 where there is none). */
export interface DrawBlock {
  readonly y: Float64Array;
  readonly linear: Float64Array;
}

/** What is drawn: the inputs, the model over them, and how far each source moves the result where that is known. */
export interface Drawable {
  readonly inputs: readonly DrawnInput[];
  readonly model: (values: Float64Array) => number;
  readonly effects: ReadonlyMap<string, number>;
}

type Source = DrawnInput['components'][number];
type Fill = (rows: readonly Float64Array[], starts: Int32Array, block: DrawBlock) => void;

/**
 * Makes blocks of draws, always into the same arrays. Random numbers are what a draw costs, so a row of them for each source is used
 * for several blocks, each time turned against the other rows by random steps: what comes together is new every time, and what one row
 * alone adds is even by its making, so the blocks don't hang together in the error.
 */
export function blockDrawer(drawable: Drawable, random: RandomStream): () => DrawBlock {
  const sources = [
    ...new Map(
      drawable.inputs
        .flatMap(({ components }) => components.filter(({ u }) => u !== 0))
        .map((component) => [component.key, component]),
    ).values(),
  ];
  const shared = sharedSpreads(sources);
  const slices = sources.map((source) =>
    slicesOf(source, shared.has(source.group) && isStudent(source)),
  );
  const rows = sources.map(() => new Float64Array(2 * BLOCK));
  const starts = new Int32Array(sources.length);
  const block = { y: new Float64Array(BLOCK), linear: new Float64Array(BLOCK) };
  const fill = compileFill(drawable, { sources, shared }, random);
  let turn = 0;
  return () => {
    if (turn % TURNS === 0)
      for (const [index, edges] of slices.entries())
        fillEvenly(rows[index] as Float64Array, edges, random);
    for (let i = 0; i < starts.length; i++) starts[i] = Math.floor(random.uniform() * BLOCK);
    turn++;
    fill(rows, starts, block);
    return block;
  };
}

/** Groups of Student's t that have their spread in common, with ν. */
function sharedSpreads(sources: readonly Source[]): ReadonlyMap<string, number> {
  const groups = Map.groupBy(sources.filter(isStudent), ({ group }) => group);
  return new Map(
    [...groups]
      .filter(([, { length }]) => length > 1)
      .map(([name, [one]]) => [name, Number(one?.nu)]),
  );
}

/** The loop over a block, written out and compiled for these very inputs (numbers and positions only), since a loop over tables took twice as long. */
function compileFill(
  { inputs, model, effects }: Drawable,
  { sources, shared }: { sources: readonly Source[]; shared: ReadonlyMap<string, number> },
  random: RandomStream,
): Fill {
  const groups = [...shared.keys()];
  const rows = sources.map(
    (_, k) => `const t${k} = rows[${k}].subarray(starts[${k}], starts[${k}] + ${BLOCK});`,
  );
  const spreads = [...shared.values()].map(
    (nu, k) => `const q${k} = Math.sqrt(random.chiSquare(${nu}) / ${nu});`,
  );
  const draws = sources.map((source, k) => {
    const spread = isStudent(source) ? groups.indexOf(source.group) : -1;
    return `const z${k} = t${k}[i]${spread < 0 ? '' : ` / q${spread}`};`;
  });
  const position = new Map(sources.map(({ key }, k) => [key, k]));
  const sum = (terms: Iterable<readonly [string, number]>) =>
    [...terms]
      .filter(([, u]) => u !== 0)
      .map(([key, u]) => ` + ${Number(u)} * z${position.get(key)}`);
  const values = inputs.map(({ value, components }, k) => {
    const terms = components.map(({ key, u }) => [key, u] as const);
    return `values[${k}] = ${Number(value)}${sum(terms).join('')};`;
  });
  const moving = [...effects].filter(([key]) => position.has(key));
  const body = `const values = new Float64Array(${inputs.length});
    return (rows, starts, { y, linear }) => {
      ${rows.join(' ')}
      for (let i = 0; i < ${BLOCK}; i++) {
        ${[...spreads, ...draws, ...values].join(' ')}
        y[i] = model(values);
        linear[i] = 0${sum(moving).join('')};
      }
    };`;
  return new Function('random', 'model', body)(random, model) as Fill;
}
