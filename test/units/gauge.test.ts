import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { type Gauge, readGauge } from '../../src/units/gauge.ts';
import { readQuantity } from '../../src/units/quantity.ts';
import { convertUnit } from '../../src/units/unit.ts';

function thickness(text: string): Gauge {
  const result = readGauge(text);
  if ('wrong' in result) throw new Error(`${text} ${result.wrong}`);
  return result;
}

/** Half of the last printed digit, and a little for the binary fraction it stands on. */
const PRINTED = 0.00005 + 1e-12;

/**
 * Gauge, weight of bare sheet in lb/ft², and inches of steel, galvanized sheet and aluminium as printed.
 * Inches: sheet metal gauge chart at greaseralley.com (2010); steel and aluminium agree with machinecalcs.com, galvanized with the
 * SMACNA table after ASTM A924. The chart at eicac.co.uk prints 0.0306 in for 22 ga galvanized beside 0.853 mm, which is 0.0336 in.
 */
const published = [
  [10, 5.625, 0.1345, 0.1382, 0.1019],
  [11, 5.0, 0.1196, 0.1233, 0.0907],
  [12, 4.375, 0.1046, 0.1084, 0.0808],
  [13, 3.75, 0.0897, 0.0934, 0.072],
  [14, 3.125, 0.0747, 0.0785, 0.0641],
  [15, 2.8125, 0.0673, 0.071, 0.0571],
  [16, 2.5, 0.0598, 0.0635, 0.0508],
  [17, 2.25, 0.0538, 0.0575, 0.0453],
  [18, 2.0, 0.0478, 0.0516, 0.0403],
  [19, 1.75, 0.0418, 0.0456, 0.0359],
  [20, 1.5, 0.0359, 0.0396, 0.032],
  [21, 1.375, 0.0329, 0.0366, 0.0285],
  [22, 1.25, 0.0299, 0.0336, 0.0253],
  [23, 1.125, 0.0269, 0.0306, 0.0226],
  [24, 1.0, 0.0239, 0.0276, 0.0201],
  [25, 0.875, 0.0209, 0.0247, 0.0179],
  [26, 0.75, 0.0179, 0.0217, 0.0159],
] as const;

describe.each(published)('%i ga', (gauge, pounds, steel, galvanized, aluminium) => {
  test('of steel is its weight over 41.82 lb/ft² per inch, as printed to four decimals', () => {
    const { value, note } = thickness(`${gauge} ga steel`);
    expect(Math.abs(value - steel)).toBeLessThanOrEqual(PRINTED);
    expect(value).toBeCloseTo(pounds / 41.82, 12);
    expect(note).toContain(`${pounds} lb/ft²`);
  });

  test('of galvanized sheet is as printed, which is 2½ oz/ft² more than bare sheet', () => {
    const { value } = thickness(`${gauge} ga galvanized`);
    expect(value).toBe(galvanized);
    expect(Math.abs(value - (pounds + 2.5 / 16) / 41.82)).toBeLessThanOrEqual(PRINTED);
  });

  test('of aluminium is the wire gauge, as printed to four decimals', () => {
    const { value } = thickness(`${gauge} ga aluminium`);
    expect(Math.abs(value - aluminium)).toBeLessThanOrEqual(PRINTED);
  });
});

test('the ends of the tables are as printed', () => {
  expect(thickness('3 ga steel').value).toBeCloseTo(0.2391, 4);
  expect(thickness('38 ga steel').value).toBeCloseTo(0.006, 4);
  expect(thickness('8 ga galvanized').value).toBe(0.1681);
  expect(thickness('30 ga galvanized').value).toBe(0.0157);
  expect(thickness('3 ga aluminium').value).toBeCloseTo(0.2294, 4);
  expect(thickness('36 ga aluminium').value).toBe(0.005);
});

test('a gauge is a length in inches, shown to the table’s four decimals, with its table named', () => {
  expect(thickness('18 ga steel')).toEqual({
    value: 2 / 41.82,
    unit: 'in',
    decimals: 4,
    note: 'Manufacturers’ Standard Gauge for Sheet Steel: 2 lb/ft² ÷ 41.82 lb/ft² per inch',
  });
  expect(thickness('16 ga galvanized').note).toBe(
    'galvanized sheet gauge, nominal (ASTM A924), with the zinc on both sides',
  );
  expect(thickness('20 ga aluminium').note).toBe(
    'American Wire Gauge (Brown & Sharpe), ASTM B258: 0.005 in · 92^((36 − 20)/39)',
  );
  expect(convertUnit(thickness('18 ga steel').value, 'in', 'mm')).toBeCloseTo(1.2147, 4);
});

describe('readGauge refuses', () => {
  test.each([
    [
      'a gauge without a material, and says what it may mean',
      '16 ga',
      'is a gauge without a material: it may be 0.0598 in of steel, 0.0635 in of galvanized, 0.0508 in of aluminium',
      'write "16 ga steel" or "16 ga galvanized" or "16 ga aluminium"',
    ],
    [
      'the same where one table only goes as far',
      '38 gauge',
      'is a gauge without a material: it may be 0.0060 in of steel',
      'write "38 ga steel"',
    ],
    [
      'a gauge in no table',
      '0 ga',
      'is a gauge without a material, and in no table',
      'write the thickness, like "1.2 mm"',
    ],
    [
      'a material without a table',
      '16 ga stainless',
      'has no gauge table for "stainless"',
      'name one of steel, galvanized, aluminium, or write the thickness, like "1.2 mm"',
    ],
    [
      'a gauge past the end of its table',
      '39 ga steel',
      'is outside the table: steel has 3 to 38 ga',
      'write the thickness, like "1.2 mm"',
    ],
    [
      'another spelling of the material',
      '20 ga aluminum',
      'is not how a gauge is written here',
      'write "20 ga aluminium"',
    ],
    [
      'another spelling of gauge',
      '16 Gauge Galvanised steel',
      'is not how a gauge is written here',
      'write "16 ga galvanized"',
    ],
    [
      'a plain thickness',
      '1.2 mm',
      'is not a sheet gauge',
      'write it like "18 ga steel", whole numbers only',
    ],
    [
      'half a gauge',
      '16.5 ga steel',
      'is not a sheet gauge',
      'write it like "18 ga steel", whole numbers only',
    ],
  ])('%s', (_, text, wrong, fix) => {
    expect(readGauge(text)).toEqual({ wrong, fix });
  });

  test('what begins like a gauge and is none', () => {
    expect(readGauge('16 gallons steel')).toHaveProperty('wrong', 'is not a sheet gauge');
    expect(readGauge('16 ga toString')).toHaveProperty(
      'wrong',
      'has no gauge table for "toString"',
    );
  });
});

test('no gauge passes for a plain quantity', () => {
  expect(readQuantity('18 ga steel')).toHaveProperty('wrong');
});

describe('against the units program', () => {
  const units = (from: string): number | undefined => {
    const { status, stdout } = spawnSync('units', ['--terse', '-d', '15', from, 'in'], {
      encoding: 'utf8',
    });
    return status === 0 ? Number(stdout) : undefined;
  };
  const present = units('1 in') === 1;

  test.for([
    ['steel', 'stdgauge', 3, 38],
    ['aluminium', 'wiregauge', 3, 36],
  ] as const)('every gauge of %s is its %s', ([material, table, from, to], { skip }) => {
    skip(!present, 'there is no units program here (Debian package "units")');
    for (let gauge = from; gauge <= to; gauge++) {
      const want = units(`${table}(${gauge})`) as number;
      const got = thickness(`${gauge} ga ${material}`).value;
      expect(Math.abs(got / want - 1), `${gauge} ga ${material}`).toBeLessThan(1e-12);
    }
  });
});
