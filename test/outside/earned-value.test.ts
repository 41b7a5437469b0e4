import { describe, expect, test } from 'vitest';
import { earnedSchedule } from '../../src/plan/earned-schedule.ts';
import { earnedValue } from '../../src/plan/earned-value.ts';

// Inputs and rounded results of a and b as published in course solutions; inputs of c after Schwalbe, Information Technology
// Project Management. Long decimals are computed by the formulas of ANSI/PMI 19-006.
describe('earned value', () => {
  const cases = [
    {
      name: 'a project over cost and late',
      inputs: { budget: 248, planned: 158, earned: 148, actual: 210 },
      variances: [-62, -10],
      indexes: [0.7047619048, 0.9367088608],
      completion: [351.8918918919, 141.8918918919, -103.8918918919],
      needed: 2.6315789474,
      published: { costIndex: 0.7047, scheduleIndex: 0.94, within: 0.005 },
    },
    {
      name: 'a project whose two indexes are the same',
      inputs: { budget: 100, planned: 70, earned: 50, actual: 70 },
      variances: [-20, -20],
      indexes: [0.7142857143, 0.7142857143],
      completion: [140, 70, -40],
      needed: 1.6666666667,
      published: { costIndex: 0.714, scheduleIndex: 0.714, within: 0.0005 },
    },
    {
      name: 'a project under cost and late',
      inputs: { budget: 200000, planned: 120000, earned: 100000, actual: 90000 },
      variances: [10000, -20000],
      indexes: [1.1111111111, 0.8333333333],
      completion: [180000, 90000, 20000],
      needed: 0.9090909091,
      published: { costIndex: 1.11, scheduleIndex: 0.83, within: 0.005 },
    },
  ] as const;

  test.each(cases)('of $name', ({ inputs, variances, indexes, completion, needed, published }) => {
    const found = earnedValue(inputs);
    expect([found.costVariance, found.scheduleVariance]).toEqual(variances);
    const rest = [
      ...[found.costIndex, found.scheduleIndex, found.estimateAtCompletion],
      ...[found.estimateToComplete, found.varianceAtCompletion, found.toCompleteIndex],
    ];
    for (const [index, value] of [...indexes, ...completion, needed].entries())
      expect(rest[index]).toBeCloseTo(value, 9);
    for (const name of ['costIndex', 'scheduleIndex'] as const)
      expect(Math.abs((found[name] ?? 0) - published[name])).toBeLessThan(published.within);
  });

  test('has no index where nothing is divided by, and none is infinite', () => {
    expect(earnedValue({ budget: 100, planned: 0, earned: 0, actual: 0 })).toEqual({
      costVariance: 0,
      scheduleVariance: 0,
      costIndex: undefined,
      scheduleIndex: undefined,
      estimateAtCompletion: undefined,
      estimateToComplete: undefined,
      varianceAtCompletion: undefined,
      toCompleteIndex: 1,
    });
    const begun = earnedValue({ budget: 100, planned: 10, earned: 0, actual: 20 });
    expect(begun).toMatchObject({ costIndex: 0, estimateAtCompletion: undefined });
    for (const actual of [100, 130])
      expect(earnedValue({ budget: 100, planned: 90, earned: 80, actual }).toCompleteIndex).toBe(
        undefined,
      );
  });
});

// Formulas as in training material by Lipke and Henderson; the values are made up, worked out by hand.
describe('earned schedule', () => {
  const planned = [100, 250, 450, 700, 900, 1000];

  test('lies on the planned curve where the earned value does', () => {
    const found = earnedSchedule({ planned, earned: 560, actualTime: 5 });
    expect(found.earnedTime).toBeCloseTo(3.44, 10);
    expect(found.scheduleVariance).toBeCloseTo(-1.56, 10);
    expect(found.scheduleIndex).toBeCloseTo(0.688, 10);
    expect(found.estimateAtCompletion).toBeCloseTo(8.7209302326, 9);
    expect(found.toCompleteIndex).toBeCloseTo(2.56, 10);
  });

  test('is the whole plan when all is earned, and nothing when nothing is', () => {
    expect(earnedSchedule({ planned, earned: 1000, actualTime: 8 }).earnedTime).toBe(6);
    expect(earnedSchedule({ planned, earned: 1200, actualTime: 8 }).earnedTime).toBe(6);
    const nothing = earnedSchedule({ planned: [0, ...planned], earned: 0, actualTime: 2 });
    expect(nothing).toMatchObject({ earnedTime: 0, estimateAtCompletion: undefined });
  });

  test('has no index at the start, and none to complete once the planned time is over', () => {
    expect(earnedSchedule({ planned, earned: 0, actualTime: 0 }).scheduleIndex).toBeUndefined();
    expect(earnedSchedule({ planned, earned: 700, actualTime: 6 }).toCompleteIndex).toBe(undefined);
  });
});
