import { blockDrawer } from './draw-blocks.ts';
import { DrawMoments, varianceOfSum } from './draw-moments.ts';
import type { DrawnInput } from './drawn-input.ts';
import { BLOCK } from './even-draws.ts';
import { coverOfSum } from './linear-part.ts';
import { randomStream } from './random.ts';
import { TailDraws } from './tail-draws.ts';
import { mergeComponents, scaleComponents } from './uncertain.ts';

/** What came of the draws. */
export interface Drawn {
  /** Mean and standard deviation, as sure as the draws that the ends took make them. */
  readonly mean: number;
  readonly u: number;
  /** Ends of the probabilistically symmetric 95 % interval (JCGM 101 7.7). */
  readonly low: number;
  readonly high: number;
  /** Standard errors of the two ends: what another seed may move them by. */
  readonly lowError: number;
  readonly highError: number;
  /** How many draws it took. */
  readonly draws: number;
}

/** How the draws are made. */
export interface DrawOptions {
  readonly seed: number;
  /** Number of independent draws that the ends are to be as good as; no more than these are made, in whole blocks. */
  readonly draws: number;
  /** Slope of the model for each input, where the law of propagation knows it: what steers the draws. */
  readonly slopes?: readonly number[];
}

/** Blocks made before it is asked how many more it takes. */
const FIRST = 2;
const BEYOND = 0.025;

/**
 * Propagates distributions (JCGM 101:2008 clause 7) by seeded draws. The linear part of the model, whose distribution is known without
 * chance, steers: the draws have to tell only what the model does otherwise, so that few do for one that is nearly straight.
 */
export function drawDistribution(
  inputs: readonly DrawnInput[],
  model: (values: Float64Array) => number,
  { seed, draws, slopes }: DrawOptions,
): Drawn {
  const effects = effectsOf(inputs, slopes);
  const cover = coverOfSum(effects);
  const next = blockDrawer({ inputs, model, slopes }, randomStream(seed));
  const most = Math.ceil(draws / BLOCK);
  const first = next();
  const sorted = first.y.slice().sort();
  const asked = { p: BEYOND, cover, asGoodAs: draws };
  const tails = [new TailDraws(1, sorted, asked), new TailDraws(-1, sorted, asked)] as const;
  const moments = new DrawMoments(model(Float64Array.from(inputs, ({ value }) => value)));
  const take = (block: typeof first) => {
    for (const tail of tails) tail.add(block);
    moments.add(block);
  };
  take(first);
  for (let made = 1, aim = Math.min(FIRST, most); ; ) {
    for (; made < aim; made++) take(next());
    const [low, high] = [tails[0].end(), tails[1].end()];
    if ((low.near && high.near) || made >= most) {
      return {
        ...moments.result(varianceOfSum(effects)),
        ...{ low: low.at, high: high.at, lowError: low.error, highError: high.error },
        draws: made * BLOCK,
      };
    }
    // Even rows show what they are worth only after some blocks.
    const needed = Math.ceil((1.1 * Math.max(low.needed, high.needed)) / BLOCK);
    aim = Math.min(most, Math.max(made + 1, Math.min(needed, 8 * made)));
  }
}

/** How far each source moves the linear part. */
function effectsOf(
  inputs: readonly DrawnInput[],
  slopes: readonly number[] | undefined,
): DrawnInput['components'] {
  if (slopes === undefined) return [];
  return mergeComponents(
    inputs.flatMap(({ components }, index) => scaleComponents(components, slopes[index] as number)),
  );
}
