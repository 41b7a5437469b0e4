import { describe, expect, test } from 'vitest';
import { type MeasuredLists, measuredProject, valuesIn, workedIn } from './measured-project.ts';

const gap = { id: 'digital', step: '0.1 mm' };
const twoSpecs = {
  a: {},
  b: {},
  sum: { formula: 'a + b', inputs: { a: 'a', b: 'b' } },
};

/** Days, states and values of a derived spec. */
function worked(lists: MeasuredLists, spec = 'sum') {
  return valuesIn(measuredProject(lists), spec).map(({ date, state, value }) => [
    date.slice(5),
    state,
    Number(value.toPrecision(12)),
  ]);
}

describe('a derived spec has a value for each day and state', () => {
  test('in which all its inputs were read', () => {
    const readings = [
      { spec: 'a', date: '2025-03-01', values: '1' },
      { spec: 'b', date: '2025-03-01', values: '10' },
      { spec: 'a', date: '2025-03-02', values: '2' },
      { spec: 'b', date: '2025-03-03', values: '30' },
      { spec: 'a', date: '2025-03-04', state: 'after', values: '4' },
      { spec: 'b', date: '2025-03-04', state: 'after', values: '40' },
    ];
    expect(worked({ specs: twoSpecs, readings })).toEqual([
      ['03-01', 'as-found', 11],
      ['03-04', 'after', 44],
    ]);
  });

  test('and never mixes two states of one day', () => {
    const day = { date: '2025-03-01' };
    const readings = [
      { ...day, spec: 'a', state: 'before', values: '1' },
      { ...day, spec: 'b', state: 'after', values: '40' },
      { ...day, spec: 'a', state: 'after', values: '4' },
    ];
    expect(worked({ specs: twoSpecs, readings })).toEqual([['03-01', 'after', 44]]);
  });

  test('by the last of several readings of that day and state', () => {
    const readings = [
      { spec: 'a', values: '1' },
      { spec: 'b', values: '10' },
      { spec: 'a', values: '2' },
    ];
    expect(worked({ specs: twoSpecs, readings })).toEqual([['03-01', 'as-found', 12]]);
  });
});

test('the days of a spec that carries all its inputs come in their order, whichever was read first', () => {
  const both = { ...twoSpecs, sum: { ...twoSpecs.sum, carried: ['a', 'b'] } };
  const readings = [
    { spec: 'a', date: '2025-03-01', values: '1' },
    { spec: 'a', date: '2025-03-05', values: '5' },
    { spec: 'b', date: '2025-03-02', values: '20' },
    { spec: 'b', date: '2025-03-09', values: '90' },
  ];
  expect(worked({ specs: both, readings })).toEqual([
    ['03-02', 'as-found', 21],
    ['03-05', 'as-found', 25],
    ['03-09', 'as-found', 95],
  ]);
});

describe('a carried input', () => {
  const carried = { ...twoSpecs, sum: { ...twoSpecs.sum, carried: ['b'] } };

  test('stands until it is read anew, in whatever state it was', () => {
    const readings = [
      { spec: 'a', date: '2025-03-01', values: '1' },
      { spec: 'b', date: '2025-03-02', values: '10' },
      { spec: 'a', date: '2025-03-03', values: '3' },
      { spec: 'b', date: '2025-03-05', values: '20', state: 'final' },
      { spec: 'a', date: '2025-03-05', values: '5', state: 'after' },
      { spec: 'a', date: '2025-03-09', values: '9', state: 'after' },
    ];
    expect(worked({ specs: carried, readings })).toEqual([
      ['03-03', 'as-found', 13],
      ['03-05', 'after', 25],
      ['03-09', 'after', 29],
    ]);
  });

  test('alone makes a value of each day that anything was read anew', () => {
    const all = { ...twoSpecs, sum: { ...twoSpecs.sum, carried: ['a', 'b'] } };
    const readings = [
      { spec: 'a', date: '2025-03-01', values: '1' },
      { spec: 'b', date: '2025-03-02', values: '10', state: 'after' },
      { spec: 'a', date: '2025-03-03', values: '3', state: 'after' },
    ];
    expect(worked({ specs: all, readings })).toEqual([
      ['03-02', 'after', 11],
      ['03-03', 'after', 13],
    ]);
  });
});

describe('a value that was worked out', () => {
  test('keeps what it was worked out of, its unit, and an id of its own', () => {
    const project = measuredProject({
      specs: { ...twoSpecs, sum: { ...twoSpecs.sum, unit: 'in' } },
      readings: [
        { spec: 'a', values: '20.4', instrument: 'digital' },
        { spec: 'b', values: '5', instrument: 'digital' },
      ],
      instruments: [gap],
    });
    const value = workedIn(project, 'sum');
    expect(value).toMatchObject({ kind: 'worked', id: 'on-2025-03-01-as-found', unit: 'in' });
    expect(value.value).toBeCloseTo(1, 14);
    expect(value.u).toBeCloseTo((0.1 * Math.sqrt(2 / 12)) / 25.4, 14);
    expect(value.sources.map((source) => source?.id)).toEqual(['r-1', 'r-2']);
    expect(value.inputs.map((input) => input.value)).toEqual([expect.closeTo(0.0204, 15), 0.005]);
  });

  test('has no U where nothing is known of what went in, and three digits then', () => {
    const specs = { ...twoSpecs, sum: { ...twoSpecs.sum, formula: 'a/(a + b)*a' } };
    const readings = [
      { spec: 'a', values: '1' },
      { spec: 'b', values: '2' },
    ];
    const value = workedIn(measuredProject({ specs, readings }), 'sum');
    expect(value).toMatchObject({ u: undefined, U: undefined, decimals: 3 });
  });

  test('can be worked out of others that were, through any order in the file', () => {
    const specs = {
      twice: { formula: '2*s', inputs: { s: 'sum' } },
      ...twoSpecs,
    };
    const readings = [
      { spec: 'a', values: '1' },
      { spec: 'b', values: '10' },
    ];
    expect(worked({ specs, readings }, 'twice')).toEqual([['03-01', 'as-found', 22]]);
  });

  test('is left out on a day on which it means nothing', () => {
    const specs = { ...twoSpecs, sum: { ...twoSpecs.sum, formula: 'a*a/b' } };
    const readings = [
      { spec: 'a', date: '2025-03-01', values: '4' },
      { spec: 'b', date: '2025-03-01', values: '0' },
      { spec: 'a', date: '2025-03-02', values: '4' },
      { spec: 'b', date: '2025-03-02', values: '8' },
    ];
    expect(worked({ specs, readings })).toEqual([['03-02', 'as-found', 2]]);
  });

  test('round a ring there is none', () => {
    const specs = {
      p: { formula: 'x', inputs: { x: 'q' } },
      q: { formula: 'x + y', inputs: { x: 'p', y: 'a' } },
      a: {},
    };
    const readings = [{ spec: 'a', values: '1' }];
    expect(worked({ specs, readings }, 'p')).toEqual([]);
    expect(worked({ specs, readings }, 'q')).toEqual([]);
  });
});
