import { describe, expect, test } from 'vitest';
import type { Written } from '../book/project-of.ts';
import { figuresIn, measuredProject } from './measured-project.ts';
import { figuresOf } from './spec-read.ts';

describe('a target', () => {
  // One value and a stated error of ±0.5 kg: U = 1.96·0.5/√3 = 0.566 kg.
  const reached = (spec: Written, ...values: readonly string[]) =>
    figuresOf({
      spec,
      instrument: { 'stated-error': '0.5 kg' },
      readings: values.map((value, index) => ({
        values: value,
        date: `2025-03-0${index + 1}`,
        state: index === 0 ? 'as-found' : 'after',
      })),
    }).reached;

  test.each([
    ['9.4', 'reached'],
    ['9.5', 'undecided'],
    ['10.5', 'undecided'],
    ['10.6', 'not reached'],
  ])('of at most 10 kg and a value of %s kg is %s', (value, want) => {
    expect(reached({ target: '10 kg', better: 'lower' }, value)).toBe(want);
  });

  test.each([
    ['10.6', 'reached'],
    ['10.5', 'undecided'],
    ['9.5', 'undecided'],
    ['9.4', 'not reached'],
  ])('of at least 10 kg and a value of %s kg is %s', (value, want) => {
    expect(reached({ target: '10 kg', better: 'higher' }, value)).toBe(want);
  });

  test.each([
    ['10.5', 'reached'],
    ['9.5', 'reached'],
    ['10.6', 'not reached'],
    ['9.4', 'not reached'],
  ])('that is to be met as it is, 10 kg, and a value of %s kg is %s', (value, want) => {
    expect(reached({ target: '10 kg', better: 'nominal' }, value)).toBe(want);
  });

  test('lies away from what was found where the spec does not say which way is better', () => {
    expect(reached({ target: '10 kg' }, '20', '8')).toBe('reached');
    expect(reached({ target: '10 kg' }, '5', '8')).toBe('not reached');
    expect(reached({ target: '10 kg' }, '5', '12')).toBe('reached');
  });

  test('may be in another unit', () => {
    expect(reached({ target: '10000 g', better: 'lower' }, '9.4')).toBe('reached');
  });

  test('says nothing where U is not known, or nothing was measured', () => {
    const spec = { target: '10 kg', better: 'lower' };
    expect(figuresOf({ spec, readings: [{ values: '1' }] })).toMatchObject({
      target: 10,
      reached: undefined,
    });
    expect(reached(spec)).toBeUndefined();
  });
});

describe('a limit per a length', () => {
  test('is as much smaller or larger as the length that was measured over', () => {
    const { limits } = figuresOf({
      spec: {
        ...{ quantity: 'length', unit: 'mm', nominal: '0 mm', tolerance: '20 µm' },
        ...{ per: '300 mm', over: '75 mm' },
      },
      readings: [],
    });
    expect(limits).toEqual({
      lower: expect.closeTo(-0.005, 15),
      upper: expect.closeTo(0.005, 15),
    });
  });

  test('judges by the smaller limit', () => {
    const verdict = (over: string) =>
      figuresOf({
        spec: { quantity: 'length', unit: 'mm', max: '0.02 mm', per: '300 mm', over },
        instrument: { 'stated-error': '1 µm' },
        readings: [{ values: '0.006' }],
      }).verdict;
    expect(verdict('0.3 m')).toBe('meets');
    expect(verdict('75 mm')).toBe('undecided');
    expect(verdict('50 mm')).toBe('does not meet');
  });
});

describe('a derived spec', () => {
  const specs = {
    a: {},
    b: {},
    gap: { formula: 'a - b', inputs: { a: 'a', b: 'b' }, max: '5 mm', target: '4 mm' },
  };
  const instruments = [{ id: 'caliper', 'stated-error': '0.2 mm' }];
  const pair = (date: string, state: string, a: string, b: string) => {
    const common = { date, state, instrument: 'caliper' };
    return [
      { spec: 'a', values: a, ...common },
      { spec: 'b', values: b, ...common },
    ];
  };
  const readings = [
    ...pair('2025-03-01', 'as-found', '16', '10'),
    ...pair('2025-04-01', 'after', '13', '10'),
  ];

  test('has its verdict, its target, and its change like one that is read', () => {
    const figures = figuresIn(measuredProject({ specs, readings, instruments }), 'gap');
    expect(figures).toMatchObject({ verdict: 'meets', reached: 'reached' });
    expect(figures.history.map(({ value }) => value)).toEqual([
      expect.closeTo(6, 12),
      expect.closeTo(3, 12),
    ]);
    expect(figures.change).toMatchObject({ value: expect.closeTo(-3, 12), changed: true });
    // Four independent errors of 0.2/√3 mm.
    expect(figures.change?.u).toBeCloseTo((2 * 0.2) / Math.sqrt(3), 12);
  });

  test('is known as of a day only as far as it had been read by then', () => {
    const project = measuredProject({ specs, readings, instruments });
    const day = project.firstDay;
    expect(project.asOf(day).spec('gap')).toMatchObject({
      verdict: 'does not meet',
      reached: 'not reached',
      change: undefined,
    });
  });

  test('loses what both sides of a change share through one zero', () => {
    const zeroed = readings.map((reading) => ({ ...reading, zero: 'morning' }));
    const figures = figuresIn(measuredProject({ specs, readings: zeroed, instruments }), 'gap');
    expect(figures.latest?.u).toBeUndefined();
    expect(figures.change?.u).toBeUndefined();
    expect(figures.change?.changed).toBeUndefined();
  });
});
