import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

describe('a number with a unit', () => {
  const limit = (instead: string) => check({ 'press/specs.yaml': ['0.10 mm', instead] });

  it('is refused without the unit', async () => {
    expect(await limit('0.10')).toMatchInlineSnapshot(`
      "press/specs.yaml:7:8
        max: "0.10" has no unit
        → write the unit after it, like "0.10 mm""
    `);
  });

  it('is refused with an unknown unit, and a known spelling is offered', async () => {
    const found = await check({ 'press/instruments.yaml': ['0.5 N·m', '0.5 Nm'] });
    expect(found).toMatchInlineSnapshot(`
      "press/instruments.yaml:8:9
        step: "0.5 Nm" has an unknown unit "Nm"
        → write "0.5 N·m""
    `);
  });

  it('is refused with a decimal comma', async () => {
    expect(await limit('0,10 mm')).toMatchInlineSnapshot(`
      "press/specs.yaml:7:8
        max: "0,10 mm" is not a number with a unit
        → write "0.10 mm""
    `);
  });

  it('is refused with a unit of another quantity', async () => {
    expect(await limit('0.10 kg')).toMatchInlineSnapshot(`
      "press/specs.yaml:7:8
        max: "kg" is a unit of mass, and the spec "ram-play" measures length
        → units of length: m, cm, mm, µm, in, thou, ft, km, mi"
    `);
  });

  it('may be in another unit of the same quantity', async () => {
    expect(await limit('100 µm')).toBe('');
  });
});

describe('a unit alone', () => {
  it('that is misspelt is refused with its spelling', async () => {
    const found = await check({ 'press/specs.yaml': ['unit: N·m', 'unit: Nm'] });
    expect(found).toMatchInlineSnapshot(`
      "press/specs.yaml:13:9
        unit: "Nm" is not a unit known here
        → write "N·m""
    `);
  });

  it('that nobody knows is refused', async () => {
    const found = await check({ 'press/specs.yaml': ['unit: N·m', 'unit: furlong'] });
    expect(found).toMatchInlineSnapshot(`
      "press/specs.yaml:13:9
        unit: "furlong" is not a unit known here"
    `);
  });

  it('belongs to the quantity of its spec: an energy is no torque', async () => {
    const found = await check({ 'press/specs.yaml': ['unit: N·m', 'unit: kW'] });
    expect(found).toMatchInlineSnapshot(`
      "press/specs.yaml:13:9
        unit: "kW" is a unit of power, and the spec "screw-torque" measures torque
        → units of torque: N·m, lbf·ft, lbf·in"
    `);
  });

  it('belongs, in a reading, to the quantity of the spec it reads', async () => {
    const found = await check({ 'press/ledger/readings.csv': ['0.41,mm', '0.41,kPa'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:2:51
        unit: "kPa" is a unit of pressure, and the spec "ram-play" measures length
        → units of length: m, cm, mm, µm, in, thou, ft, km, mi"
    `);
  });
});

describe('an instrument', () => {
  it('reads the quantity of the spec', async () => {
    const found = await check({
      'press/ledger/readings.csv': ['0.41,mm,dial-indicator', '0.41,mm,torque-wrench'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:2:54
        instrument: "torque-wrench" measures torque, and the spec "ram-play" measures length
        → name an instrument that measures length, like "dial-indicator""
    `);
  });

  it('has its step and its errors in units of its own quantity', async () => {
    const found = await check({
      'press/instruments.yaml': [
        'step: 0.01 mm',
        'step: 0.01 °\n  stated-error: 1 lb\n  certificate-u: 2 µm',
      ],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/instruments.yaml:4:9
        step: "°" is a unit of angle, and the instrument "dial-indicator" measures length
        → units of length: m, cm, mm, µm, in, thou, ft, km, mi
      press/instruments.yaml:5:17
        stated-error: "lb" is a unit of mass, and the instrument "dial-indicator" measures length
        → units of length: m, cm, mm, µm, in, thou, ft, km, mi"
    `);
  });
});

describe('a temperature', () => {
  const oven = (tolerance: string) => `- id: oven
  name: Oven
  about: Temperature of the oven while the bearing warms.
  quantity: temperature
  unit: °C
  system: screw
  nominal: 90 °C
  tolerance: ${tolerance}
`;

  it('has a tolerance that is a difference of temperatures', async () => {
    expect(await check({ 'press/specs-oven.yaml': oven('5 K') })).toBe('');
    expect(await check({ 'press/specs-oven.yaml': oven('5 °C') })).toMatchInlineSnapshot(`
      "press/specs-oven.yaml:8:14
        tolerance: "°C" is a unit of temperature, and a tolerance on it is a temperature-difference
        → units of temperature-difference: K, Δ°F"
    `);
  });
});

describe('the mass of a part', () => {
  it('is a mass', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['name: Gib', 'name: Gib\n  mass: 4 N'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:3:9
        mass: "N" is a unit of force, and a mass is wanted
        → units of mass: kg, g, t, lb"
    `);
  });
});
