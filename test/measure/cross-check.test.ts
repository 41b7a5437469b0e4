import { describe, expect, test } from 'vitest';
import {
  type CrossCheck,
  crossCheck,
  crossCheckKey,
  intervalToShow,
} from '../../src/measure/cross-check.ts';
import { specFigures } from '../../src/measure/spec-figures.ts';
import type { Worked } from '../../src/measure/worked.ts';
import type { Written } from '../book/project-of.ts';
import { type MeasuredLists, measuredProject, workedIn } from './measured-project.ts';

const caliper = { id: 'caliper', 'certificate-u': '0.2 mm' };
const rod = { a: '8', b: '4', spec: {} as Written, instrument: caliper as Written };

/** A gap worked out of two lengths that were read with one instrument. */
function gap(change: Partial<typeof rod> = {}): Worked {
  const { a, b, spec, instrument } = { ...rod, ...change };
  const lists: MeasuredLists = {
    specs: { a: {}, b: {}, gap: { formula: 'a - b', inputs: { a: 'a', b: 'b' }, ...spec } },
    readings: [
      { spec: 'a', values: a, instrument: 'caliper' },
      { spec: 'b', values: b, instrument: 'caliper' },
    ],
    instruments: [instrument],
  };
  return workedIn(measuredProject(lists), 'gap');
}

/** A ratio whose lower length is hardly known, so that its distribution leans far over. */
const leaning = () =>
  gap({
    a: '8',
    b: '0.5',
    spec: { formula: 'a*a/b', max: '300 mm', min: '80 mm' },
  });

const keep = (worked: Worked, check: CrossCheck) => new Map([[crossCheckKey(worked), check]]);

describe('crossCheck', () => {
  test('agrees where the model is a sum of normal sources', () => {
    // u = 0.1·√2 mm = 0.00014 m: the tolerance is half of 0.000 01 m.
    const { agrees, tolerance, u } = crossCheck(gap());
    expect(agrees).toBe(true);
    expect(tolerance).toBeCloseTo(0.000005, 15);
    expect(u / (0.0001 * Math.SQRT2)).toBeCloseTo(1, 2);
  });

  test('gives the same numbers for the same inputs', () => {
    expect(crossCheck(gap())).toEqual(crossCheck(gap()));
  });

  test('agrees for a few repeats too, whose ends wander with the seed', () => {
    const plain = { id: 'caliper' };
    for (const b of ['4.1 4.2', '4.13 4.22 4.15', '4.1 4.2 4.3 4.2'])
      expect(crossCheck(gap({ a: b, spec: { formula: 'a' }, instrument: plain })).agrees, b).toBe(
        true,
      );
  });

  test('disagrees where the model bends within U, and gives an uneven interval', () => {
    const worked = leaning();
    const check = crossCheck(worked);
    const [low, high] = [check.low * 1000, check.high * 1000];
    expect(check.agrees).toBe(false);
    // a²/b at 8 over 0.5 ± 0.196: from 64/0.696 to 64/0.304, and a little wider for the ± 0.196 of the 8.
    expect(low).toBeGreaterThan(91);
    expect(low).toBeLessThan(64 / 0.696);
    expect(high).toBeGreaterThan(64 / 0.304);
    expect(high).toBeLessThan(212);
    expect(high - worked.value).toBeGreaterThan(2 * (worked.value - low));
  });

  test('draws a source that two inputs share once, and what was worked out before whole', () => {
    const specs = {
      a: {},
      twice: { formula: '2*a', inputs: { a: 'a' } },
      none: { formula: 't/a', quantity: 'ratio', unit: '1', inputs: { t: 'twice', a: 'a' } },
    };
    const readings = [{ spec: 'a', values: '5', instrument: 'caliper' }];
    const none = workedIn(measuredProject({ specs, readings, instruments: [caliper] }), 'none');
    const check = crossCheck(none);
    expect([check.low, check.high]).toEqual([expect.closeTo(2, 12), expect.closeTo(2, 12)]);
  });
});

describe('crossCheckKey', () => {
  test('is the same for the same inputs, and another for any number that changes', () => {
    const changes: readonly Partial<typeof rod>[] = [
      { a: '8.01' },
      { b: '4.01' },
      { a: '8.1 8.2' },
      { spec: { formula: 'b - a' } },
      { spec: { formula: 'a - b + 0*a' } },
      { spec: { inputs: { a: 'b', b: 'a' } } },
      { instrument: { ...caliper, 'certificate-u': '0.21 mm' } },
      { instrument: { ...caliper, 'certificate-k': '3' } },
      { instrument: { id: 'caliper', 'stated-error': '0.2 mm' } },
      { instrument: { ...caliper, step: '0.01 mm' } },
      { spec: { inputs: { a: 'a', b: '4 ± 0.2 mm' } } },
      { spec: { inputs: { a: 'a', b: '4 ± 0.3 mm' } } },
    ];
    const keys = [{}, ...changes].map((change) => crossCheckKey(gap(change)));
    expect(new Set(keys).size).toBe(changes.length + 1);
    expect(crossCheckKey(gap())).toBe(keys[0]);
    expect(keys[0]).toMatch(/^[0-9a-f]{32}$/);
  });

  test('does not ask in which unit the spec is shown, or what its limits are', () => {
    expect(crossCheckKey(gap({ spec: { unit: 'in', max: '1 in' } }))).toBe(crossCheckKey(gap()));
  });
});

describe('the drawn interval', () => {
  test('is shown only where the two disagree', () => {
    const worked = leaning();
    const check = crossCheck(worked);
    expect(intervalToShow(worked, new Map())).toBeUndefined();
    expect(intervalToShow(worked, keep(worked, { ...check, agrees: true }))).toBeUndefined();
    expect(intervalToShow(worked, keep(worked, check))).toEqual({
      low: expect.closeTo(check.low * 1000, 9),
      high: expect.closeTo(check.high * 1000, 9),
    });
  });

  test('lies the right way round where more in one unit is less in the other', () => {
    const specs = {
      used: { quantity: 'volume', unit: 'L' },
      fuel: {
        ...{ quantity: 'consumption', unit: 'mpg(UK)' },
        ...{ formula: 'V/s', inputs: { V: 'used', s: '100 ± 60 km' } },
      },
    };
    const readings = [{ spec: 'used', values: '10' }];
    const worked = workedIn(measuredProject({ specs, readings }), 'fuel');
    const check = crossCheck(worked);
    // 95 of 100 distances lie between 100 ∓ 57 km, on 10 L, which are 2.2 gallons.
    expect(intervalToShow(worked, keep(worked, { ...check, agrees: false }))).toEqual({
      low: expect.closeTo((43 * 0.62137119) / 2.1996925, 0),
      high: expect.closeTo((157 * 0.62137119) / 2.1996925, 0),
    });
  });

  test('decides the verdict in the place of ± U', () => {
    const worked = leaning();
    const { spec } = worked.recipe;
    // 128 mm ± 50 mm reaches below 80 mm; drawn, nearly all lies above 90 mm.
    expect(specFigures(spec, [worked]).verdict).toBe('undecided');
    const interval = intervalToShow(worked, keep(worked, crossCheck(worked)));
    expect(specFigures(spec, [{ ...worked, interval }]).verdict).toBe('meets');
  });
});
