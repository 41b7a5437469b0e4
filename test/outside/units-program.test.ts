import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { kindNames, type QuantityKind, quantityKinds } from '../../src/units/kinds.ts';
import { convertUnit, kindOf, toBaseUnit } from '../../src/units/unit.ts';

/** What the units program answers, or undefined where it is not there or does not know. */
function ask(from: string, to: string): number | undefined {
  const { status, stdout } = spawnSync('units', ['--terse', '-d', '15', from, to], {
    encoding: 'utf8',
  });
  const number = Number(stdout?.trim());
  return status === 0 && Number.isFinite(number) ? number : undefined;
}

const present = ask('1 in', 'cm') === 2.54;
const ABSENT = 'there is no units program here (Debian package "units")';

/** The coherent base unit of each kind as the program spells it. Sound levels and counts are no units to it. */
const bases: Partial<Record<QuantityKind, string>> = {
  ...{ length: 'm', area: 'm^2', volume: 'm^3', mass: 'kg', 'mass-per-length': 'kg/m' },
  ...{ density: 'kg/m^3', force: 'N', torque: 'N m', stiffness: 'N/m', damping: 'N s/m' },
  ...{ pressure: 'Pa', 'temperature-difference': 'K', angle: 'radian', slope: '1', time: 's' },
  ...{ speed: 'm/s', 'rotational-speed': 'radian/s', frequency: 'Hz', power: 'W' },
  ...{ 'specific-power': 'W/kg', voltage: 'V', current: 'A', resistance: 'ohm', charge: 'C' },
  ...{ flow: 'm^3/s', consumption: 'm^3/m', 'spreading-rate': '1/m', illuminance: 'lux' },
  ratio: '1',
};

/** How the program spells our units. */
const spelt: Readonly<Record<string, string>> = {
  ...{ m: 'm', cm: 'cm', mm: 'mm', µm: 'um', in: 'in', thou: 'mil', ft: 'ft', km: 'km', mi: 'mi' },
  ...{ 'm²': 'm^2', 'cm²': 'cm^2', 'mm²': 'mm^2', 'in²': 'in^2', 'ft²': 'ft^2' },
  ...{ L: 'liter', mL: 'ml', 'cm³': 'cm^3', 'gal(UK)': 'brgallon', 'gal(US)': 'gallon' },
  ...{ kg: 'kg', g: 'g', t: 'tonne', lb: 'lb', 'kg/m': 'kg/m', 'lb/ft': 'lb/ft' },
  ...{ 'kg/L': 'kg/liter', N: 'N', kN: 'kN', lbf: 'lbf' },
  ...{ N·m: 'N m', lbf·ft: 'lbf ft', lbf·in: 'lbf in' },
  ...{ 'N/mm': 'N/mm', 'lbf/in': 'lbf/in', 'N·s/m': 'N s/m', 'lbf·s/in': 'lbf s/in' },
  ...{ bar: 'bar', kPa: 'kPa', MPa: 'MPa', psi: 'psi', K: 'K', 'Δ°F': 'degF' },
  ...{ '°': 'degree', arcmin: 'arcmin', rad: 'radian', 'mm/m': 'mm/m', 'µm/m': 'um/m' },
  ...{ s: 's', min: 'min', h: 'hour', 'km/h': 'km/hour', 'm/s': 'm/s', mph: 'mph' },
  ...{ rpm: 'rpm', Hz: 'Hz', kHz: 'kHz', kW: 'kW', W: 'W', hp: 'hp', PS: 'metrichorsepower' },
  ...{ 'W/kg': 'W/kg', 'kW/t': 'kW/tonne', V: 'V', mV: 'mV', A: 'A', mA: 'mA' },
  ...{ Ω: 'ohm', kΩ: 'kohm', MΩ: 'Mohm', A·h: 'A hour', 'L/min': 'liter/min' },
  ...{ 'L/100km': 'liter/(100 km)', 'm²/L': 'm^2/liter', 'ft²/gal(US)': 'ft^2/gallon' },
  ...{ lx: 'lux', '1': '1', '%': 'percent' },
};

const ours = kindNames.flatMap((kind) => quantityKinds[kind].map(({ symbol }) => symbol));
const shareOff = (found: number, theirs: number | undefined) =>
  Math.abs(found / (theirs ?? Number.NaN) - 1);

test('all our units are in the list but those with a zero of their own or none at all', () => {
  const left = ours.filter((symbol) => spelt[symbol] === undefined);
  expect(left).toEqual(['°C', '°F', 'mpg(UK)', 'mpg(US)', 'dB(A)', 'count']);
  expect(Object.keys(spelt).filter((symbol) => kindOf(symbol) === undefined)).toEqual([]);
});

describe('the units program', () => {
  test.for(Object.keys(spelt))('has as many base units in one %s', (symbol, { skip }) => {
    skip(!present, ABSENT);
    const base = bases[kindOf(symbol) as QuantityKind];
    const theirs = ask(spelt[symbol] ?? '', base ?? '');
    expect(shareOff(toBaseUnit(1, symbol), theirs)).toBeLessThan(3e-15);
  });

  test.for([-459, -40, 0, 68, 212])('turns %d °F into as many °C', (degrees, { skip }) => {
    skip(!present, ABSENT);
    const theirs = ask(`tempF(${degrees})`, 'tempC') ?? Number.NaN;
    expect(Math.abs(convertUnit(degrees, '°F', '°C') - theirs)).toBeLessThan(1e-12);
  });

  test.for([
    ['mpg(UK)', 'mile/brgallon'],
    ['mpg(US)', 'mile/gallon'],
  ] as const)('turns 30 %s into as many litres to 100 km', ([symbol, theirs], { skip }) => {
    skip(!present, ABSENT);
    const litres = ask(`1/(30 ${theirs})`, 'liter/(100 km)');
    expect(shareOff(convertUnit(30, symbol, 'L/100km'), litres)).toBeLessThan(3e-15);
  });

  test('would catch a wrong factor: a US gallon is no imperial one', ({ skip }) => {
    skip(!present, ABSENT);
    expect(shareOff(toBaseUnit(1, 'gal(US)'), ask('brgallon', 'm^3'))).toBeGreaterThan(0.1);
  });
});
