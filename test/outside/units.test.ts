import { createRequire } from 'node:module';
import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { kindNames, quantityKinds } from '../../src/units/kinds.ts';
import { convertUnit, kindOf, toBaseUnit } from '../../src/units/unit.ts';

/** How far a double is from an exact decimal, as a share of it. */
const errorOf = (value: number, exact: string) =>
  new Decimal(value).minus(exact).div(exact).abs().toNumber();

// Exact values by definition: international yard and pound (1959), g = 9.80665 m/s², litre = 1 dm³.
// Printed factors: NIST SP 811 (2008) appendix B.8, in the unit given there times 10 to the power beside it.
const factors = [
  ['in', 'm', '0.0254', '2.54', -2],
  ['thou', 'm', '0.0000254', '2.54', -5],
  ['ft', 'm', '0.3048', '3.048', -1],
  ['mph', 'm/s', '0.44704', '4.4704', -1],
  ['lb', 'kg', '0.45359237', '4.535924', -1],
  ['lbf', 'N', '4.4482216152605', '4.448222', 0],
  ['psi', 'kPa', '6.894757293168361336722673445', '6.894757', 0],
  ['bar', 'kPa', '100', '1', 2],
  ['lbf·ft', 'N·m', '1.3558179483314004', '1.355818', 0],
  ['lbf·in', 'N·m', '0.11298482902761670', '1.129848', -1],
  ['lbf/in', 'N/mm', '0.17512683524647637795', '1.751268', -1],
  ['gal(US)', 'L', '3.785411784', '3.785412', 0],
  ['gal(UK)', 'L', '4.54609', '4.54609', 0],
  ['hp', 'W', '745.69987158227022', '7.456999', 2],
  ['PS', 'W', '735.49875', '7.354988', 2],
] as const;

describe('NIST SP 811 (2008), appendix B.8', () => {
  test.each(factors)('%s to %s is exact to the rounding of doubles', (from, to, exact) => {
    expect(errorOf(convertUnit(1, from, to), exact)).toBeLessThan(1e-15);
  });

  test.each(factors)('%s to %s agrees with every printed digit', (from, to, _, printed, power) => {
    const digits = new Decimal(printed).decimalPlaces();
    const factor = new Decimal(printed).times(new Decimal(10).pow(power));
    // The metric horsepower is a tie, 735.49875, which is printed as 735.4988: half a unit is allowed.
    const half = new Decimal(0.5).times(new Decimal(10).pow(power - digits));
    expect(
      factor
        .minus(convertUnit(1, from, to))
        .abs()
        .lte(half.times(1 + 1e-9)),
    ).toBe(true);
  });

  test('a revolution per minute is π/30 radians per second, printed as 1.047 198 E−01', () => {
    expect(toBaseUnit(1, 'rpm')).toBeCloseTo(0.1047198, 7);
  });

  test('litres to 100 km are 235.215 over US miles to the gallon', () => {
    expect(convertUnit(1, 'mpg(US)', 'L/100km')).toBeCloseTo(235.215, 3);
    expect(errorOf(convertUnit(1, 'mpg(US)', 'L/100km'), '235.2145833333333333')).toBeLessThan(
      1e-15,
    );
    expect(errorOf(convertUnit(1, 'mpg(UK)', 'L/100km'), '282.4809363318221586')).toBeLessThan(
      1e-15,
    );
  });

  test.each([
    [-459.67, -273.15],
    [-40, -40],
    [0, -160 / 9],
    [32, 0],
    [68, 20],
    [98.6, 37],
    [212, 100],
  ])('%d °F is %d °C: (t − 32)/1.8, appendix B.8', (fahrenheit, celsius) => {
    expect(convertUnit(fahrenheit, '°F', '°C')).toBeCloseTo(celsius, 11);
    expect(convertUnit(celsius, '°C', '°F')).toBeCloseTo(fahrenheit, 11);
  });

  test('a difference of 100 °F is one of 55.555… K', () => {
    expect(errorOf(convertUnit(100, 'Δ°F', 'K'), '55.55555555555555555')).toBeLessThan(1e-15);
  });
});

// The main file of unitmath 0.8 needs a loader that Node 24 no longer runs; its bundle does not, and has no types.
const unitmath = createRequire(import.meta.url)('unitmath/dist/UnitMath.js') as (
  value: number,
  unit: string,
) => { to(unit: string): { value: number } };

/** How unitmath spells our units; it has no imperial gallon and no metric horsepower, and cancels mm/m away. */
const spelt: Readonly<Record<string, string>> = {
  ...{ m: 'm', km: 'km', cm: 'cm', mm: 'mm', µm: 'um', in: 'in', thou: 'mil', ft: 'ft', mi: 'mi' },
  ...{ 'm²': 'm^2', 'cm²': 'cm^2', 'mm²': 'mm^2', 'in²': 'in^2', 'ft²': 'ft^2' },
  ...{ L: 'L', mL: 'mL', 'cm³': 'cm^3', 'gal(US)': 'gallon' },
  ...{ kg: 'kg', g: 'g', t: 'tonne', lb: 'lbm', N: 'N', kN: 'kN', lbf: 'lbf' },
  ...{ N·m: 'N m', lbf·ft: 'lbf ft', lbf·in: 'lbf in', 'N/mm': 'N/mm', 'lbf/in': 'lbf/in' },
  ...{ 'kg/m': 'kg/m', 'lb/ft': 'lbm/ft', 'N·s/m': 'N s/m', 'lbf·s/in': 'lbf s/in' },
  ...{ 'W/kg': 'W/kg', 'kW/t': 'kW/tonne', 'm²/L': 'm^2/L', 'ft²/gal(US)': 'ft^2/gallon' },
  ...{ bar: 'bar', kPa: 'kPa', MPa: 'MPa', psi: 'psi', '°C': 'degC', '°F': 'degF' },
  ...{ K: 'K', 'Δ°F': 'degR', '°': 'deg', arcmin: 'arcmin', rad: 'rad' },
  ...{ s: 's', min: 'min', h: 'h' },
  ...{
    'km/h': 'km/h',
    'm/s': 'm/s',
    mph: 'mi/h',
    Hz: 'Hz',
    kHz: 'kHz',
    kW: 'kW',
    W: 'W',
    hp: 'hp',
  },
  ...{ V: 'V', mV: 'mV', A: 'A', mA: 'mA', Ω: 'ohm', kΩ: 'kohm', MΩ: 'Mohm' },
};

describe('unitmath', () => {
  const pairs = Object.keys(spelt).flatMap((from) =>
    Object.keys(spelt)
      .filter((to) => to !== from && kindOf(to) === kindOf(from))
      .map((to) => [from, to] as const),
  );

  test('knows most of our units, and every kind with more than one of them but three', () => {
    expect(Object.keys(spelt).filter((symbol) => kindOf(symbol) === undefined)).toEqual([]);
    const compared = new Set(pairs.map(([from]) => kindOf(from)));
    const left = kindNames.filter((kind) => quantityKinds[kind].length > 1 && !compared.has(kind));
    expect(left).toEqual(['slope', 'consumption', 'ratio']);
  });

  test.each(pairs)('turns 12.34 %s into as many %s', (from, to) => {
    const theirs = unitmath(12.34, spelt[from] ?? '').to(spelt[to] ?? '').value;
    expect(Math.abs(convertUnit(12.34, from, to) / theirs - 1)).toBeLessThan(1e-14);
  });
});
