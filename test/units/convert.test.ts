import { describe, expect, test } from 'vitest';
import { convertInterval, convertUnit, isTurned, unitBeside } from '../../src/units/unit.ts';

describe('convertUnit', () => {
  test('goes through exact factors', () => {
    expect(convertUnit(1, 'in', 'mm')).toBeCloseTo(25.4, 12);
    expect(convertUnit(25.4, 'mm', 'thou')).toBeCloseTo(1000, 9);
    expect(convertUnit(1, 'lb', 'kg')).toBe(0.45359237);
    expect(convertUnit(100, 'N·m', 'lbf·ft')).toBeCloseTo(73.75621, 5);
  });

  test('leaves a value in its own unit untouched', () => {
    expect(convertUnit(0.1 + 0.2, '°F', '°F')).toBe(0.1 + 0.2);
    expect(convertUnit(30, 'mpg(UK)', 'mpg(UK)')).toBe(30);
  });

  test('moves the zero of a temperature', () => {
    expect(convertUnit(0, '°C', '°F')).toBeCloseTo(32, 10);
    expect(convertUnit(212, '°F', '°C')).toBeCloseTo(100, 10);
    expect(convertUnit(-40, '°C', '°F')).toBeCloseTo(-40, 10);
  });

  test('turns miles to the gallon into litres to 100 km and back, more of one being less of the other', () => {
    // 4.54609 × 100 / 1.609344 = 282.480936…
    expect(convertUnit(30, 'mpg(UK)', 'L/100km')).toBeCloseTo(282.480936331822 / 30, 11);
    expect(convertUnit(10, 'L/100km', 'mpg(UK)')).toBeCloseTo(28.2480936331822, 11);
    expect(convertUnit(30, 'mpg(UK)', 'mpg(US)')).toBeCloseTo(30 * (3.785411784 / 4.54609), 11);
  });

  test('refuses another kind: a torque is no energy, and a temperature no difference of temperatures', () => {
    expect(() => convertUnit(1, 'N·m', 'N')).toThrow('cannot convert N·m (torque) to N (force)');
    expect(() => convertUnit(20, '°C', 'K')).toThrow(
      'cannot convert °C (temperature) to K (temperature-difference)',
    );
  });

  test('refuses a unit nobody knows, and a known one in other letters', () => {
    expect(() => convertUnit(1, 'furlong', 'm')).toThrow('unknown unit furlong');
    expect(() => convertUnit(1, 'KG', 'lb')).toThrow('unknown unit KG');
  });
});

describe('convertInterval', () => {
  test('leaves offsets out: a degree Celsius is 1.8 degrees Fahrenheit wide anywhere', () => {
    expect(convertInterval(1, 0, '°C', '°F')).toBeCloseTo(1.8, 12);
    expect(convertInterval(1, 90, '°C', '°F')).toBeCloseTo(1.8, 12);
    expect(convertInterval(9, 50, '°F', '°C')).toBeCloseTo(5, 12);
  });

  test('depends on where it stands for miles to the gallon, as the slope of the curve does', () => {
    // |d(282.48/x)/dx| = 282.48/x²: at 30 mpg a mile is 0.3139 L/100 km wide, at 15 mpg four times that.
    const at = (mpg: number) => convertUnit(mpg, 'mpg(UK)', 'L/100km');
    const width = (mpg: number) => convertInterval(1, at(mpg), 'mpg(UK)', 'L/100km');
    expect(width(30)).toBeCloseTo(282.480936331822 / 900, 11);
    expect(width(15)).toBeCloseTo(282.480936331822 / 225, 11);
  });
});

test('isTurned where more in one unit is less in the other', () => {
  expect(isTurned('mpg(UK)', 'L/100km')).toBe(true);
  expect(isTurned('L/100km', 'mpg(US)')).toBe(true);
  expect(isTurned('mpg(UK)', 'mpg(US)')).toBe(false);
  expect(isTurned('°F', '°C')).toBe(false);
});

describe('unitBeside', () => {
  test('names the unit of the other system, and none where both systems have the same', () => {
    expect(unitBeside('kg', 'imperial')).toBe('lb');
    expect(unitBeside('lbf·ft', 'imperial')).toBe('N·m');
    expect(unitBeside('V', 'imperial')).toBeUndefined();
  });

  test('follows the project where gallons differ', () => {
    expect(unitBeside('L', 'imperial')).toBe('gal(UK)');
    expect(unitBeside('L', 'us')).toBe('gal(US)');
    expect(unitBeside('L/100km', 'us')).toBe('mpg(US)');
  });
});
