import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { uniformAt } from '../../src/plan/keyed-random.ts';
import { type PaceDraws, workClock } from '../../src/plan/work-clock.ts';

const SEED = 11;
const WEEKS = 6;
const shares = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 0.5, noNaN: true })), {
  minLength: 7 * WEEKS,
  maxLength: 7 * WEEKS,
});
const paces = fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 900 })), {
  minLength: 1,
  maxLength: 5,
});

/** Two draws with the same paces to choose from. */
const drawsOf = (values: readonly number[]): PaceDraws => ({
  values: Float64Array.from([...values, ...values]),
  width: values.length,
  seed: SEED,
});

/** Minutes worked by a time, counted day by day. */
function workedBy(
  time: number,
  { draw, values, shares }: { draw: number; values: readonly number[]; shares: readonly number[] },
): number {
  let minutes = 0;
  for (const [day, share] of shares.entries()) {
    const week = Math.floor(day / 7);
    const pace = values[Math.floor(uniformAt(SEED, draw, week) * values.length)] ?? 0;
    minutes += pace * share * Math.max(0, Math.min(1, time - day));
  }
  return minutes;
}

describe('the work clock', () => {
  test('ends work where a count day by day has as many minutes more, and not a moment later', () => {
    const asked = fc.record({
      shares,
      values: paces,
      draw: fc.nat(1),
      from: fc.double({ min: 0, max: 7 * WEEKS, noNaN: true, maxExcluded: true }),
      minutes: fc.double({ min: 0.01, max: 3000, noNaN: true }),
    });
    fc.assert(
      fc.property(asked, ({ shares, values, draw, from, minutes }) => {
        const clock = workClock(drawsOf(values), Float64Array.from(shares));
        // Another draw before it leaves nothing behind.
        clock.begin(1 - draw);
        clock.advance(3, 500);
        clock.begin(draw);
        const end = clock.advance(from, minutes);
        const by = (time: number) => workedBy(time, { draw, values, shares });
        const goal = by(from) + minutes;
        if (by(clock.horizon) < goal - 1e-6) expect(end).toBe(clock.horizon);
        else {
          expect(by(end)).toBeCloseTo(goal, 6);
          expect(end).toBeLessThanOrEqual(clock.horizon);
          expect(by(end - 1e-6)).toBeLessThan(goal);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('takes no time for no work, and knows none beyond its horizon', () => {
    const clock = workClock(drawsOf([60]), new Float64Array(7).fill(1 / 7));
    clock.begin(0);
    expect(clock.advance(2.5, 0)).toBe(2.5);
    expect(clock.advance(9, 0)).toBe(7);
    expect(clock.advance(8, 30)).toBe(7);
    expect(clock.advance(0, 61)).toBe(7);
    expect(clock.advance(0, 30)).toBeCloseTo(3.5, 12);
  });
});
