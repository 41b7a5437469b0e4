import { describe, expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import { forecast } from '../../src/plan/forecast.ts';
import type { Forecast, ForecastInputs } from '../../src/plan/forecast-types.ts';
import { say } from '../../src/words/said.ts';
import { wordsOf } from '../../src/words/words.ts';
import { done, shaper } from './build.ts';
import { evenings, numberOf } from './calendars.ts';
import { phase } from './drawn.ts';

function made(change: Partial<ForecastInputs> = {}): Forecast {
  const result = forecast({ ...shaper, ...change });
  if (result.kind !== 'forecast') throw new Error(`no forecast: ${JSON.stringify(result)}`);
  return result;
}

/** So many phases that came out as planned that next to nothing is uncertain but what a test adds. */
const asPlanned = Array.from({ length: 1000 }, (_, index) =>
  done(`done-${index}`, 600, 600, '2025-04-20'),
);
const steady = { waits: [], pace: [600, 600, 600, 600] };

describe('a forecast', () => {
  test('with nothing uncertain is the day the calendar finishes on', () => {
    // 1300 minutes at ten hours a week from Monday, 2025-04-21: two weeks, and the first Tuesday evening of the third.
    const phases = [...asPlanned, phase('a', 1000), phase('b', 300, 'a')];
    const { finish, left, phases: each } = made({ ...steady, phases });
    expect(finish).toEqual({
      ...{
        low: numberOf('2025-05-06'),
        middle: numberOf('2025-05-06'),
        high: numberOf('2025-05-06'),
      },
    });
    expect(Math.abs(left.middle - 1300)).toBeLessThan(2);
    expect(each.map(({ id, middle }) => [id, middle])).toEqual([
      ['a', numberOf('2025-05-03')],
      ['b', numberOf('2025-05-06')],
    ]);
  });

  test('is put off by weeks away', () => {
    const away = [{ from: numberOf('2025-04-28'), to: numberOf('2025-05-11') }];
    const phases = [...asPlanned, phase('a', 1300)];
    const calendar = workingCalendar({ ...evenings, away });
    expect(made({ ...steady, phases, calendar }).finish.middle).toBe(numberOf('2025-05-20'));
  });

  test('lets other work pass a phase that waits, and then the wait alone decides', () => {
    const phases = [...asPlanned, phase('a', 120), phase('b', 600)];
    const waits = [
      { id: 'glass', phases: ['a'], from: numberOf('2025-07-01'), to: numberOf('2025-07-01') },
    ];
    const { finish, phases: each, drivers } = made({ ...steady, phases, waits });
    expect(each.find(({ id }) => id === 'b')?.middle).toBe(numberOf('2025-04-26'));
    expect(finish.middle).toBe(numberOf('2025-07-01'));
    const shares = drivers.map(({ by, id, share }) => [by, id, share]);
    expect(shares).toContainEqual(['wait', 'glass', 1]);
    expect(shares).toContainEqual(['phase', 'a', 1]);
    expect(shares).toContainEqual(['phase', 'b', 0]);
  });

  test('waits out the lag after a phase that is finished', () => {
    // Cured three weeks after 2025-04-20, so from Monday, 2025-05-12.
    const phases = [...asPlanned, phase('a', 60, ['done-0', 21])];
    expect(made({ ...steady, phases }).finish.middle).toBe(numberOf('2025-05-13'));
  });

  test('adjusts estimates by how finished phases came out', () => {
    const late = [done('one', 600, 1200, '2025-01-25'), done('two', 600, 1200, '2025-03-01')];
    const phases = [...late, phase('a', 600)];
    expect(Math.abs(made({ ...steady, phases }).left.middle - 1200)).toBeLessThan(20);
    expect(made({ ...steady, phases }).ratios.map(({ ratio }) => ratio)).toEqual([2, 2]);
  });

  test('leaves a tenth of its plan to a phase that has outrun every draw', () => {
    const over = { ...phase('a', 1000), state: 'under way', spent: 1500 } as const;
    expect(made({ ...steady, phases: [...asPlanned, over] }).left.middle).toBeCloseTo(100, 9);
  });

  test('goes on with a phase under way whatever its predecessors do', () => {
    const begun = { ...phase('b', 600, ['a', 90]), state: 'under way', spent: 300 } as const;
    const phases = [...asPlanned, phase('a', 120), begun];
    expect(made({ ...steady, phases }).phases.find(({ id }) => id === 'b')?.middle).toBeLessThan(
      numberOf('2025-05-01'),
    );
  });

  test('of the shaper is a range that its pace and its wait drive, with later for earlier phases never', () => {
    const { finish, drivers, histogram } = made();
    expect(finish.low).toBeLessThan(finish.high);
    expect(finish.low).toBeGreaterThan(numberOf('2025-06-01'));
    expect(drivers[0]).toMatchObject({ by: 'pace' });
    expect(drivers[0]?.correlation).toBeLessThan(0);
    expect(drivers.find(({ by }) => by === 'wait')?.correlation).toBeGreaterThan(0.5);
    expect(histogram.length).toBeLessThanOrEqual(24);
    expect(histogram.reduce((sum, { draws }) => sum + draws, 0)).toBe(shaper.draws);
  });
});

describe('there is no date but a reason', () => {
  const reasonWith = (change: Partial<ForecastInputs>) => {
    const result = forecast({ ...shaper, ...change });
    return result.kind === 'not yet' ? say(result.reason, wordsOf('en')) : result.kind;
  };

  test.each<{ when: string; change: Partial<ForecastInputs>; says: RegExp }>([
    {
      when: 'one phase is finished',
      change: { phases: shaper.phases.slice(1) },
      says: /^1 of at least 2 phases/,
    },
    {
      when: 'there are three weeks',
      change: { pace: [60, 60, 60] },
      says: /^there are 3 of at least 4/,
    },
    { when: 'nothing was worked', change: { pace: [0, 0, 0, 0] }, says: /no pace$/ },
    {
      when: 'the calendar is empty',
      change: { calendar: workingCalendar({ ...evenings, week: [0, 0, 0, 0, 0, 0, 0] }) },
      says: /no time in any week/,
    },
    { when: 'it would take decades', change: { pace: [1, 0, 1, 0] }, says: /more than 20 years/ },
  ])('when $when', ({ change, says }) => {
    expect(reasonWith(change)).toMatch(says);
  });

  test('when all is finished, or phases wait for each other', () => {
    expect(forecast({ ...shaper, phases: shaper.phases.slice(0, 2) })).toEqual({
      kind: 'finished',
      day: numberOf('2025-03-01'),
    });
    const ring = [phase('a', 1, 'b'), phase('b', 1, 'a')];
    expect(forecast({ ...shaper, phases: ring })).toMatchObject({ kind: 'loop' });
  });
});
