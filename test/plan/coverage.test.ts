import { describe, expect, test } from 'vitest';
import { backtest } from '../../src/plan/backtest.ts';
import { forecast } from '../../src/plan/forecast.ts';
import { daysBeforeFinish, knownOn, madeUpBuild } from './made-up-builder.ts';

/** Share of four-weekly forecasts, over many made-up builds, whose 10–90 % range held the finish. */
function coverage(kind: { habit: number; chance: number }): { count: number; share: number } {
  let [count, held] = [0, 0];
  for (let seed = 1; seed <= 80; seed++) {
    const build = madeUpBuild(seed, kind);
    const forecasts = daysBeforeFinish(build).flatMap((asOf) => {
      const made = forecast(knownOn(build, asOf));
      return made.kind === 'forecast' ? { asOf, ...made.finish } : [];
    });
    count += forecasts.length;
    held += backtest(forecasts, build.finished.at(-1) ?? 0).held;
  }
  return { count, share: held / count };
}

// No source: the range is meant to hold 80 %. Found with these seeds: 86, 83 and 76 %. Few finished phases show less than there
// is in the tails of the log-normal, and the forecasts of one build hang together, so the share is not held more closely.
describe('the range from 10 to 90 % holds the finish in about 80 % of forecasts', () => {
  test.each([
    { who: 'whose plans are good', habit: 0.1, chance: 0.1 },
    { who: 'whose plans are fair', habit: 0.2, chance: 0.25 },
    { who: 'whose plans are poor', habit: 0.3, chance: 0.4 },
  ])('of builders $who', (kind) => {
    const { count, share } = coverage(kind);
    expect(count).toBeGreaterThan(500);
    expect(Math.abs(share - 0.8)).toBeLessThan(0.07);
  });
});
