import { describe, expect, test } from 'vitest';
import { propagate } from '../../src/measure/propagate.ts';
import { standardUncertainty } from '../../src/measure/uncertain.ts';
import { ready, source, value } from './source.ts';

describe('propagate', () => {
  test('gives value, sensitivities, parts and shares of u²', () => {
    // y = a·b at 3 and 5: sensitivities 5 and 3; parts 5·0.3 and 3·0.2; u² = 2.25 + 0.36.
    const {
      value: y,
      components,
      budget,
      sharedShare,
    } = propagate(ready('a*b', ['a', 'b']), [
      value(3, source('a', 0.3)),
      value(5, source('b', -0.2)),
    ]);
    expect(y).toBe(15);
    expect(standardUncertainty(components)).toBeCloseTo(Math.sqrt(2.61), 14);
    expect(budget.map(({ name, sensitivity, u }) => [name, sensitivity, u])).toEqual([
      ['a', 5, 0.3],
      ['b', 3, 0.2],
    ]);
    expect(budget.map(({ part }) => part)).toEqual([1.5, expect.closeTo(0.6, 14)]);
    expect(budget[0]?.share).toBeCloseTo(2.25 / 2.61, 14);
    expect(sharedShare).toBeCloseTo(0, 14);
  });

  test('carries every source on with its sign, so that what is shared is kept', () => {
    const zero = source('zero', 0.5);
    const difference = propagate(ready('a - b', ['a', 'b']), [
      value(9, zero, source('a', 0.3)),
      value(4, zero, source('b', 0.4)),
    ]);
    expect(difference.components).toEqual([{ ...zero, u: 0 }, source('a', 0.3), source('b', -0.4)]);
    // The shares are 0.34/0.25 and 0.41/0.25 before correlation, which takes 0.5/0.25 away again.
    expect(difference.budget.map(({ share }) => share)).toEqual([
      expect.closeTo(1.36, 12),
      expect.closeTo(1.64, 12),
    ]);
    expect(difference.sharedShare).toBeCloseTo(-2, 12);
  });

  test('counts one input that stands twice in a formula once', () => {
    const half = propagate(ready('a/(a + b)', ['a', 'b']), [value(1, source('a', 0.1)), value(1)]);
    expect(half.budget[0]?.sensitivity).toBeCloseTo(0.25, 14);
    const none = propagate(ready('a - a', ['a']), [value(1, source('a', 0.1))]);
    expect([none.value, standardUncertainty(none.components)]).toEqual([0, 0]);
  });

  test('has no shares where nothing is known', () => {
    const { budget, sharedShare, components } = propagate(ready('a + b', ['a', 'b']), [
      value(1),
      value(2),
    ]);
    expect(budget.map(({ share, u }) => [share, u])).toEqual([
      [0, 0],
      [0, 0],
    ]);
    expect([sharedShare, components]).toEqual([0, []]);
  });
});

describe('where a formula has no derivative, the slope over ± u stands in:', () => {
  const slopeOf = (text: string, at: number, u: number) =>
    propagate(ready(text, ['a']), [value(at, source('a', u))]).budget[0]?.sensitivity;

  test.each([
    ['max(a, 2)', 5, 0.1, 1],
    ['max(a, 2)', 1, 0.1, 0],
    ['max(a, 2)', 2, 0.1, 0.5],
    ['min(3*a, 2) + a', 0.1, 0.01, 4],
    ['abs(a)', 0, 0.1, 0],
    ['(a > 2)*a', 5, 0.1, 1],
    ['sqrt(a^2)', 0, 0.1, 0],
  ])('%s at %d ± %d has %d', (text, at, u, slope) => {
    expect(slopeOf(text, at, u)).toBeCloseTo(slope, 12);
  });

  test('an input that is exactly known has one too', () => {
    expect(propagate(ready('max(a, 2)', ['a']), [value(5)]).budget[0]?.sensitivity).toBeCloseTo(
      1,
      6,
    );
  });
});
