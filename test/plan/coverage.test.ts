import { describe, expect, test } from 'vitest';
import { backtest, type PastForecast } from '../../src/plan/backtest.ts';
import { forecast } from '../../src/plan/forecast.ts';
import { type Builder, daysBeforeFinish, knownOn, madeUpBuild } from './made-up-builder.ts';

/** Share of four-weekly forecasts, over many made-up builds, whose 10–90 % range held the finish of the whole, and of each phase. */
function coverage(builder: Builder): { count: number; whole: number; phases: number } {
  const [whole, phases] = [tally(), tally()];
  for (let seed = 1; seed <= 80; seed++) {
    const build = madeUpBuild(seed, builder);
    for (const asOf of daysBeforeFinish(build)) {
      const made = forecast(knownOn(build, asOf));
      if (made.kind !== 'forecast') continue;
      whole.add({ asOf, ...made.finish }, Math.max(...build.finished));
      for (const { id, ...range } of made.phases)
        phases.add({ asOf, ...range }, build.finished[Number(id.slice(1))] ?? 0);
    }
  }
  return { count: whole.count(), whole: whole.share(), phases: phases.share() };
}

function tally() {
  let [count, held] = [0, 0];
  return {
    add(made: PastForecast, finish: number): void {
      count++;
      held += backtest([made], finish).held;
    },
    count: () => count,
    share: () => held / count,
  };
}

const good: Builder = { habit: 0.1, chance: 0.1 };
const fair: Builder = { habit: 0.2, chance: 0.25 };
const poor: Builder = { habit: 0.3, chance: 0.4 };

// No source: the range is meant to hold 80 %. Found with these seeds: 76 to 83 % of the whole, 74 to 85 % of phases. Forecasts of one
// build hang together, so the share is not held more closely.
describe('the range from 10 to 90 % holds the finish, of the whole and of each phase, in about 80 % of forecasts', () => {
  test.each([
    { who: 'whose plans are good', builder: good, least: 500 },
    { who: 'whose plans are fair', builder: fair, least: 500 },
    { who: 'whose plans are poor', builder: poor, least: 500 },
    { who: 'with few phases and good plans', builder: { ...good, phases: 4 }, least: 150 },
    { who: 'with few phases and fair plans', builder: { ...fair, phases: 4 }, least: 150 },
    { who: 'with few phases and poor plans', builder: { ...poor, phases: 4 }, least: 150 },
    { who: 'on two phases at once with good plans', builder: { ...good, aside: 0.3 }, least: 500 },
    { who: 'on two phases at once with fair plans', builder: { ...fair, aside: 0.3 }, least: 500 },
    { who: 'on two phases at once with poor plans', builder: { ...poor, aside: 0.3 }, least: 500 },
  ])('of builders $who', ({ builder, least }) => {
    const { count, whole, phases } = coverage(builder);
    expect(count).toBeGreaterThan(least);
    expect(Math.abs(whole - 0.8)).toBeLessThan(0.07);
    expect(Math.abs(phases - 0.8)).toBeLessThan(0.07);
  });
});
