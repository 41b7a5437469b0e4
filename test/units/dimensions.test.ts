import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  dimensionless,
  dimensionOf,
  sameDimension,
  showDimension,
} from '../../src/units/dimensions.ts';

describe('two dimensions', () => {
  test('are the same when every exponent is', () => {
    expect(sameDimension(dimensionOf.stiffness, [0, 1, -2, 0, 0, 0])).toBe(true);
    expect(sameDimension(dimensionOf.length, dimensionOf.area)).toBe(false);
    // One exponent of six is enough, whichever it is, and its sign counts.
    for (const index of dimensionless.keys()) {
      const one = dimensionless.map((_, at) => (at === index ? 1 : 0)) as unknown as Dimension;
      const turned = one.map((exponent) =>
        exponent === 0 ? 0 : -exponent,
      ) as unknown as Dimension;
      expect(sameDimension(one, one)).toBe(true);
      expect(sameDimension(one, dimensionless)).toBe(false);
      expect(sameDimension(one, turned)).toBe(false);
    }
  });

  test('are the same where a root has left a rounding error, and not where it is more than one', () => {
    const third = 1 / 3;
    expect(sameDimension([third + third + third - 1e-16, 0, 0, 0, 0, 0], dimensionOf.length)).toBe(
      true,
    );
    expect(sameDimension([1.001, 0, 0, 0, 0, 0], dimensionOf.length)).toBe(false);
  });

  test('of kinds that measure the same in other words are the same: torque and energy, speed of turning and frequency', () => {
    expect(sameDimension(dimensionOf['rotational-speed'], dimensionOf.frequency)).toBe(true);
    expect(sameDimension(dimensionOf.power, dimensionOf.torque)).toBe(false);
  });
});

test('a dimension is shown in base units, whole powers and roots, and a number as one', () => {
  expect(showDimension(dimensionOf.force)).toBe('m·kg·s^-2');
  expect(showDimension(dimensionOf.length)).toBe('m');
  expect(showDimension(dimensionOf.resistance)).toBe('m^2·kg·s^-3·A^-2');
  expect(showDimension(dimensionOf.temperature)).toBe('K');
  expect(showDimension(dimensionOf.illuminance)).toBe('lx');
  expect(showDimension([1 / 2, 0, 0, 0, 0, 0])).toBe('m^0.5');
  expect(showDimension([1 / 3, 1e-12, 0, 0, 0, 0])).toBe('m^0.3333');
  expect(showDimension(dimensionless)).toBe('a plain number');
});
