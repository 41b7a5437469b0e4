import { describe, expect, test } from 'vitest';
import { propagate } from '../../src/measure/propagate.ts';
import { coverageFactor } from '../../src/measure/student-t.ts';
import { correlation, spreadOf } from '../../src/measure/uncertain.ts';
import { usedFreedom } from '../../src/measure/uncertainty.ts';
import { measuredProject, valuesIn, workedIn } from '../measure/measured-project.ts';
import { ready, source, value } from '../measure/source.ts';

const shareOff = (found: number | undefined, exact: number) =>
  Math.abs((found ?? Number.NaN) / exact - 1);

describe('JCGM 100:2008 H.1, calibration of an end gauge, in nm and K', () => {
  // l = ls + d − ls·(δα·θ + αs·δθ), first order.
  const gauge = propagate(
    ready('ls + d - ls*(da*th + as*dth)', ['ls', 'd', 'da', 'th', 'as', 'dth']),
    [
      value(50_000_623, source('standard', 25, { nu: 18 })),
      value(
        215,
        source('repeats', 5.8, { nu: 24 }),
        source('comparator, random', 3.9, { nu: 5 }),
        source('comparator, systematic', 6.7, { nu: 8 }),
      ),
      value(0, source('difference of expansion', 1e-6 / Math.sqrt(3), { nu: 50 })),
      value(-0.1, source('mean of the bed', 0.2), source('cycle of the room', 0.5 / Math.SQRT2)),
      value(11.5e-6, source('expansion', 2e-6 / Math.sqrt(3))),
      value(0, source('difference of temperature', 0.05 / Math.sqrt(3), { nu: 2 })),
    ],
  );
  const { u, nu } = spreadOf(gauge.components);

  test('the gauge is 50 000 838 nm long, u = 32 nm', () => {
    expect(gauge.value).toBeCloseTo(50_000_838, 6);
    expect(Math.abs((u ?? 0) - 32)).toBeLessThan(0.5);
    expect(shareOff(u, 31.663879111)).toBeLessThan(1e-9);
  });

  test.each([
    ['ls', 25, 25],
    ['d', 9.7, 9.681941953967707],
    ['da', 2.9, 2.886787],
    ['dth', 16.6, 16.599],
  ])('the part of %s is printed as %d nm', (name, printed, exact) => {
    const part = gauge.budget.find((line) => line.name === name)?.part ?? Number.NaN;
    expect(Math.abs(part - printed)).toBeLessThan(0.051);
    expect(Math.abs(part - exact)).toBeLessThan(5e-6 * exact);
  });

  test('αs and θ have no part in the first order', () => {
    const parts = gauge.budget.filter(({ name }) => name === 'as' || name === 'th');
    expect(parts.map(({ part }) => part)).toEqual([0, 0]);
  });

  test('ν is 16.7, used as 16, and U at 99 % is 93 nm', () => {
    expect(Math.abs(nu - 16.7)).toBeLessThan(0.1);
    expect(shareOff(nu, 16.75185573762724)).toBeLessThan(1e-9);
    expect(usedFreedom(nu)).toBe(16);
    expect(Math.abs(coverageFactor(0.99, 16) - 2.92)).toBeLessThan(0.005);
    expect(Math.abs(coverageFactor(0.99, 16) * (u ?? 0) - 93)).toBeLessThan(1);
  });
});

describe('JCGM 100:2008 H.2, resistance and reactance from five simultaneous sets', () => {
  const inputs = { V: 'v', I: 'i', phi: 'phi' };
  const ohms = { quantity: 'resistance', unit: 'Ω' };
  const specs = {
    v: { quantity: 'voltage', unit: 'V' },
    i: { quantity: 'current', unit: 'mA' },
    phi: { quantity: 'angle', unit: 'rad' },
    r: { ...ohms, formula: 'V/I*cos(phi)', inputs },
    x: { ...ohms, formula: 'V/I*sin(phi)', inputs },
    z: { ...ohms, formula: 'V/I', inputs: { V: 'v', I: 'i' } },
  };
  // Table H.2.
  const readings = [
    { spec: 'v', values: '5.007 4.994 5.005 4.990 4.999' },
    { spec: 'i', values: '19.663 19.639 19.640 19.685 19.678' },
    { spec: 'phi', values: '1.0456 1.0438 1.0468 1.0428 1.0433' },
  ];
  const project = (together: string | undefined) =>
    measuredProject({
      specs,
      readings: readings.map((reading) => ({ ...reading, ...(together && { together }) })),
    });
  const whole = project('sets');

  // Printed in table H.4, and recomputed from the raw readings.
  test.each([
    ['r', 127.732, 0.071, 127.732169928102, 0.071071407396996],
    ['x', 219.847, 0.295, 219.846511912638, 0.295581677358644],
    ['z', 254.26, 0.236, 254.259701948019, 0.236336130082379],
  ])('%s is printed as %d Ω with u = %d Ω', (spec, printed, printedU, exact, exactU) => {
    const { value: found, u } = workedIn(whole, spec);
    expect(Math.abs(found - printed)).toBeLessThan(0.001);
    expect(Math.abs((u ?? 0) - printedU)).toBeLessThan(0.001);
    expect(shareOff(found, exact)).toBeLessThan(1e-12);
    expect(shareOff(u, exactU)).toBeLessThan(1e-9);
  });

  const sources = (spec: string) => valuesIn(whole, spec).at(-1)?.components ?? [];

  // Tables H.2 and H.4.
  test.each([
    ['v', 'i', -0.36, -0.355311219818],
    ['v', 'phi', 0.86, 0.85762421084],
    ['i', 'phi', -0.65, -0.645111217689],
    ['r', 'x', -0.588, -0.588429784423],
    ['r', 'z', -0.485, -0.48525922421],
    ['x', 'z', 0.993, 0.992511648949],
  ])('the correlation of %s and %s is printed as %d', (a, b, printed, exact) => {
    const found = correlation(sources(a), sources(b));
    expect(Math.abs(found - printed)).toBeLessThan(0.0055);
    expect(shareOff(found, exact)).toBeLessThan(1e-9);
  });

  test('five sets leave 4 degrees of freedom, however many quantities are worked out of them', () => {
    for (const spec of ['r', 'x', 'z']) expect(workedIn(whole, spec).nu).toBeCloseTo(4, 9);
  });

  test('read one after another instead of together, u is another: the check would see it', () => {
    expect(shareOff(workedIn(project(undefined), 'r').u, 0.071071407396996)).toBeGreaterThan(1);
    expect(correlation(sources('r'), workedIn(project(undefined), 'x').components)).toBe(0);
  });
});
