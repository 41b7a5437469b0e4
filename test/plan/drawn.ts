import { randomStream } from '../../src/measure/random.ts';
import type { Draws } from '../../src/plan/forecast-draws.ts';
import type { ForecastPhase, ForecastWait } from '../../src/plan/forecast-types.ts';
import { openNetwork } from '../../src/plan/open-network.ts';
import { inOrder } from '../../src/plan/order.ts';
import { type DrawnFinishes, runDraws } from '../../src/plan/run-draws.ts';

/** A phase that is not begun, planned at some minutes. */
export function phase(
  id: string,
  planned: ForecastPhase['planned'],
  ...after: readonly (string | readonly [string, number])[]
): ForecastPhase {
  const links = after.map((link) =>
    typeof link === 'string' ? { id: link, lag: 0 } : { id: link[0], lag: link[1] },
  );
  return { id, planned, spent: 0, state: 'not started', after: links };
}

/** Numbers drawn one after another from a distribution. */
export type Draw = (stream: ReturnType<typeof randomStream>) => number;

/** Draws with minutes and ends of waits from given distributions, at sixty minutes every day. */
export function runWith(
  phases: readonly ForecastPhase[],
  waits: readonly ForecastWait[],
  made: { draws: number; minutes: readonly Draw[]; ends: readonly Draw[] },
): DrawnFinishes {
  const order = inOrder(phases);
  if (order.kind === 'loop') throw new Error('a ring');
  const stream = randomStream(101);
  const table = (columns: readonly Draw[]) =>
    Float64Array.from({ length: made.draws * columns.length }, (_, index) =>
      (columns[index % columns.length] as Draw)(stream),
    );
  const draws: Draws = {
    count: made.draws,
    minutes: table(made.minutes),
    waits: table(made.ends),
    pace: { values: new Float64Array(made.draws).fill(420), width: 1, seed: 1 },
  };
  return runDraws(openNetwork(order.items, waits, 0), draws, new Float64Array(3500).fill(1 / 7));
}

/** Mean and standard deviation. */
export function momentsOf(numbers: Float64Array): { mean: number; deviation: number } {
  const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  const squares = numbers.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { mean, deviation: Math.sqrt(squares / (numbers.length - 1)) };
}
