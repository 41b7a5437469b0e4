import { describe, expect, test } from 'vitest';
import { addressesOf } from '../../src/publish/address.ts';
import { specJson } from '../../src/publish/spec-json.ts';
import { figuresIn, measuredProject } from '../measure/measured-project.ts';

const project = measuredProject({
  specs: {
    play: {
      ...{ name: 'Play of the ram', about: 'Side play.', max: '100 µm', target: '0.05 mm' },
      better: 'lower',
    },
    half: { unit: 'thou', formula: 'p/2 + c', inputs: { p: 'play', c: '0 ± 1 µm' } },
    power: { quantity: 'power', unit: 'PS' },
  },
  readings: [
    {
      ...{ id: 'r-1', spec: 'play', values: '0.41 4.1 0.43', instrument: 'dial' },
      ...{ excluded: '2', because: 'the foot slipped', conditions: '12 °C' },
      ...{ note: 'note-to-self', by: 'helper', recorded: '2025-03-02' },
    },
    { id: 'r-2', spec: 'play', state: 'after', date: '2025-04-01', values: '3', unit: 'thou' },
  ],
  instruments: [{ id: 'dial', step: '0.01 mm', serial: 'SECRET-77' }],
});

/** What a reader of the JSON gets. */
function json(spec: string): Record<string, unknown> {
  const to = addressesOf('https://shed.example/');
  return JSON.parse(JSON.stringify(specJson(figuresIn(project, spec), project, to)));
}

describe('specJson', () => {
  test('has the spec, its limits in its own unit, and the UCUM code of the unit', () => {
    expect(json('play')).toMatchObject({
      id: 'play',
      name: 'Play of the ram',
      about: 'Side play.',
      machine: '1958 Hallin 3',
      address: 'https://shed.example/drill-press/specs/play/',
      ...{ quantity: 'length', unit: 'mm', ucum: 'mm', target: 0.05 },
    });
    expect((json('play').limits as { upper: number }).upper).toBeCloseTo(0.1, 14);
  });

  test('has every reading with its raw values, in the unit they were read in', () => {
    const [first, second] = json('play').values as Record<string, unknown>[];
    expect(first).toEqual({
      id: 'r-1',
      address: 'https://shed.example/drill-press/specs/play/#r-1',
      ...{ date: '2025-03-01', state: 'as-found', measured: true },
      value: expect.closeTo(0.42, 12),
      // Two values 0.02 mm apart: s/√2 is 0.01 mm; a step of 0.01 mm adds 0.01/√12.
      u: expect.closeTo(Math.hypot(0.01, 0.01 / Math.sqrt(12)), 12),
      degreesOfFreedom: expect.closeTo((13 / 12) ** 2, 9),
      U: expect.closeTo(12.7062047 * Math.hypot(0.01, 0.01 / Math.sqrt(12)), 7),
      coverage: 0.95,
      interval: { low: expect.any(Number), high: expect.any(Number) },
      ...{ raw: [0.41, 4.1, 0.43], rawUnit: 'mm', rawUcum: 'mm' },
      ...{ excluded: [2], because: 'the foot slipped', conditions: '12 °C', instrument: 'dial' },
    });
    expect(second).toEqual({
      id: 'r-2',
      address: 'https://shed.example/drill-press/specs/play/#r-2',
      ...{ date: '2025-04-01', state: 'after', measured: true, instrument: 'rule' },
      value: expect.closeTo(0.0762, 14),
      ...{ raw: [3], rawUnit: 'thou', rawUcum: '[mil_i]' },
    });
  });

  test('has the change, and no verdict where U is not known', () => {
    const { change, verdict, reached } = json('play');
    expect(change).toEqual({
      ...{ before: 'r-1', after: 'r-2' },
      difference: expect.closeTo(0.0762 - 0.42, 12),
    });
    expect([verdict, reached]).toEqual([undefined, undefined]);
  });

  test('says how a derived value was worked out, and that it was not measured', () => {
    const half = json('half');
    expect(half).toMatchObject({
      ...{ unit: 'thou', ucum: '[mil_i]' },
      workedOut: {
        formula: 'p/2 + c',
        inputs: { p: { spec: 'play' }, c: { given: '0 ± 1 µm' } },
      },
    });
    const values = half.values as Record<string, unknown>[];
    expect(values.map(({ id, measured, raw }) => [id, measured, raw])).toEqual([
      ['on-2025-03-01-as-found', false, undefined],
      ['on-2025-04-01-after', false, undefined],
    ]);
    expect(values[1]?.value).toBeCloseTo(1.5, 12);
    expect(json('play').workedOut).toBeUndefined();
  });

  test('has no code where UCUM has none', () => {
    expect(json('power')).toMatchObject({ unit: 'PS', values: [] });
    expect('ucum' in json('power')).toBe(false);
  });

  test('has nothing private: no serial number, note, person or day of recording', () => {
    const text = JSON.stringify(['play', 'half', 'power'].map(json));
    for (const secret of ['SECRET-77', 'note-to-self', 'helper', '2025-03-02'])
      expect(text).not.toContain(secret);
  });
});
