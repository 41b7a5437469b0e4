import fc from 'fast-check';
import { expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import { forecast } from '../../src/plan/forecast.ts';
import { drawMinutes, drawPace, drawWaits } from '../../src/plan/forecast-draws.ts';
import type { Forecast, ForecastInputs, ForecastPhase } from '../../src/plan/forecast-types.ts';
import { openNetwork } from '../../src/plan/open-network.ts';
import { inOrder } from '../../src/plan/order.ts';
import { runDraws } from '../../src/plan/run-draws.ts';
import { done } from '../plan/build.ts';
import { evenings, numberOf } from '../plan/calendars.ts';
import { phase } from '../plan/drawn.ts';

const asOf = numberOf('2025-04-20');
const DRAWS = 40;
/** Sums of fractions of days; a millionth of a day is a tenth of a second. */
const ROUNDING = 1e-6;

const phases: fc.Arbitrary<ForecastPhase[]> = fc
  .array(
    fc.record({
      minutes: fc.integer({ min: 0, max: 3000 }),
      back: fc.uniqueArray(fc.integer({ min: 1, max: 5 }), { maxLength: 3 }),
      lag: fc.integer({ min: -10, max: 60 }),
      begun: fc.boolean(),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((list) =>
    list.map(({ minutes, back, lag, begun }, index) => {
      const links = back.filter((by) => by <= index).map((by) => [`p${index - by}`, lag] as const);
      const item = phase(`p${index}`, minutes, ...links);
      return begun && index % 4 === 0 ? { ...item, state: 'under way', spent: 300 } : item;
    }),
  );

const builds: fc.Arbitrary<ForecastInputs> = fc.record({
  phases: phases.map((list) => [
    done('one', 600, 700, '2025-01-01'),
    done('two', 600, 500, '2025-02-01'),
    ...list,
  ]),
  waits: fc
    .array(
      fc.record({
        of: fc.integer({ min: 0, max: 11 }),
        from: fc.integer({ min: -20, max: 300 }),
        days: fc.integer({ min: 0, max: 90 }),
      }),
      { minLength: 1, maxLength: 6 },
    )
    .map((list) =>
      list.map(({ of, from, days }, index) => ({
        ...{ id: `w${index}`, phases: [`p${of}`, `p${of + 1}`] },
        ...{ from: asOf + from, to: asOf + from + days },
      })),
    ),
  pace: fc.array(fc.integer({ min: 60, max: 900 }), { minLength: 4, maxLength: 8 }),
  calendar: fc.constant(
    workingCalendar({ ...evenings, away: [{ from: asOf + 30, to: asOf + 50 }] }),
  ),
  asOf: fc.constant(asOf),
  seed: fc.nat(),
  draws: fc.constant(DRAWS),
});

/** Finish of every draw. */
function finishes(inputs: ForecastInputs): Float64Array {
  const order = inOrder(inputs.phases);
  if (order.kind === 'loop') throw new Error('a ring');
  const network = openNetwork(order.items, inputs.waits, asOf);
  const shares = Float64Array.from(
    { length: 7000 },
    (_, day) => inputs.calendar.minutesOn(asOf + 1 + day) / inputs.calendar.weekMinutes,
  );
  const draws = {
    count: DRAWS,
    minutes: drawMinutes(network.phases, [1.2, 0.8, 1.5], inputs),
    waits: drawWaits(inputs.waits, asOf, inputs),
    pace: drawPace(inputs.pace, inputs),
  };
  return runDraws(network, draws, shares).finish;
}

/** In each draw of its own, not only in the middle of all. */
function expectNoDrawLater(than: ForecastInputs, inputs: ForecastInputs): void {
  const limits = finishes(than);
  for (const [draw, finish] of finishes(inputs).entries())
    expect(finish).toBeLessThanOrEqual((limits[draw] as number) + ROUNDING);
}

test('taking a wait away delays no draw', () => {
  fc.assert(
    fc.property(builds, fc.nat(), (inputs, which) => {
      const waits = inputs.waits.filter((_, index) => index !== which % inputs.waits.length);
      expectNoDrawLater(inputs, { ...inputs, waits });
    }),
  );
});

test('a predecessor more brings no draw forward', () => {
  fc.assert(
    fc.property(builds, fc.nat(), fc.nat(), fc.nat({ max: 40 }), (inputs, one, other, lag) => {
      const open = inputs.phases.length - 2;
      const [first, second] = [one % open, other % open].sort((a, b) => a - b) as [number, number];
      fc.pre(first !== second);
      const phases = inputs.phases.map((item) =>
        item.id === `p${second}`
          ? { ...item, after: [...item.after, { id: `p${first}`, lag }] }
          : item,
      );
      expectNoDrawLater({ ...inputs, phases }, inputs);
    }),
  );
});

test('a phase fewer at the end delays no draw, and a faster pace delays none', () => {
  fc.assert(
    fc.property(builds, (inputs) => {
      expectNoDrawLater(inputs, { ...inputs, phases: inputs.phases.slice(0, -1) });
      expectNoDrawLater(inputs, { ...inputs, pace: inputs.pace.map((minutes) => minutes * 1.5) });
    }),
  );
});

test('a forecast is the same for the same seed, its quantiles are in order, and it lies after its day', () => {
  fc.assert(
    fc.property(builds, (inputs) => {
      const made = forecast(inputs) as Forecast;
      expect(made.kind).toBe('forecast');
      expect(forecast(inputs)).toEqual(made);
      for (const { low, middle, high } of [made.finish, ...made.phases]) {
        expect(asOf).toBeLessThanOrEqual(low);
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
        expect(high).toBeLessThanOrEqual(made.histogram.at(-1)?.to ?? 0);
      }
      expect(made.histogram.reduce((sum, bar) => sum + bar.draws, 0)).toBe(DRAWS);
    }),
  );
});
