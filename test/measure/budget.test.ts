import { describe, expect, test } from 'vitest';
import { crossCheckText, expansion } from '../../src/measure/budget.ts';
import { budgetRows } from '../../src/measure/budget-rows.ts';
import type { Written } from '../book/project-of.ts';
import { type MeasuredLists, measuredProject, workedIn } from './measured-project.ts';

const scale = { id: 'scale', quantity: 'mass', step: '1 kg', 'stated-error': '2 kg' };
const loads: MeasuredLists = {
  specs: {
    base: {},
    front: { quantity: 'mass', unit: 'kg' },
    rear: { quantity: 'mass', unit: 'lb' },
    cg: { calc: 'cg-along', inputs: { L: 'base', Wf: 'front', Wr: 'rear' } },
  },
  readings: [
    { spec: 'base', values: '2400' },
    { spec: 'front', values: '600', instrument: 'scale' },
    { spec: 'rear', values: '600', unit: 'kg', instrument: 'scale' },
  ],
  instruments: [scale],
};

/** The budget of a spec as rows of text, spaces made plain. */
function rows(lists: MeasuredLists, spec: string): string[] {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  return budgetRows(workedIn(measuredProject(lists), spec), 'en-GB').map(
    ({ name, shown, u, sensitivity, share }) =>
      plain([name, shown, u, sensitivity, share].join(' | ')),
  );
}

describe('budgetRows', () => {
  test('has every input in its own unit, with the result’s unit over it as sensitivity', () => {
    // L·Wr/(Wf + Wr): ∂/∂L = 1/2, ∂/∂Wf = −2400·600/1200² = −1 mm/kg, ∂/∂Wr = 1 mm/kg = 0.4536 mm/lb.
    // u of a load is √(1/12 + 4/3) = 1.190 kg = 2.62 lb; both loads have the same share.
    expect(rows(loads, 'cg')).toEqual([
      'L | 2,400 mm | not known | 0.500 | –',
      'Wf | 600.0 kg | 1.2 kg | −1.00 mm/kg | 50.0 %',
      'Wr | 1,322.8 lb | 2.6 lb | 0.454 mm/lb | 50.0 %',
    ]);
  });

  test('leaves the shares out where the inputs share most of their scatter', () => {
    const readings = loads.readings?.map((reading) => ({ ...reading, zero: 'morning' })) ?? [];
    // The 4/3 of the stated error is common to both and cancels: what is left is 1/12 of 17/12 each.
    // Each alone would have 17/12 over 2/12, that is 850 %, which says nothing.
    expect(rows({ ...loads, readings }, 'cg').slice(1)).toEqual([
      'Wf | 600.0 kg | 1.2 kg | −1.00 mm/kg | –',
      'Wr | 1,322.8 lb | 2.6 lb | 0.454 mm/lb | –',
      'r |  |  |  | ',
    ]);
  });

  test('shows a constant as it was given, and as exact unless it says ±', () => {
    const cg = (inputs: Written) => ({
      ...loads,
      specs: { ...loads.specs, cg: { calc: 'cg-along', inputs } },
    });
    const given = cg({ L: '8 ft', Wf: 'front', Wr: '600 ± 3 kg' });
    // ∂/∂L in mm per foot is 304.8/2; u of ± 3 kg is 1.73 kg; u of the front is 1.19 kg.
    expect(rows(given, 'cg')).toEqual([
      'L | 8 ft | exact | 152 mm/ft | –',
      'Wf | 600.0 kg | 1.2 kg | −1.02 mm/kg | 32.1 %',
      'Wr | 600.0 kg | 1.7 kg | 1.02 mm/kg | 67.9 %',
    ]);
  });

  test('writes very large and very small numbers in powers of ten, and units over units in parentheses', () => {
    const specs = {
      rate: { quantity: 'stiffness', unit: 'N/mm' },
      modulus: { quantity: 'pressure', unit: 'MPa' },
      share: {
        ...{ quantity: 'length', unit: 'mm' },
        ...{ formula: 'k/E', inputs: { k: 'rate', E: 'modulus' } },
      },
    };
    const readings = [
      { spec: 'rate', values: '20', instrument: 'rig' },
      { spec: 'modulus', values: '200000', instrument: 'rig-2' },
    ];
    const instruments = [
      { id: 'rig', quantity: 'stiffness', 'stated-error': '0.1725 N/mm' },
      { id: 'rig-2', quantity: 'pressure', 'stated-error': '1725 MPa' },
    ];
    // u of 0.1725/√3 = 0.0996 has two digits as 0.10; ∂/∂k = 1/200 000 mm/(N/mm).
    expect(rows({ specs, readings, instruments }, 'share')).toEqual([
      'k | 20.00 N/mm | 0.10 N/mm | 5.00·10^−6 mm/(N/mm) | 50.0 %',
      'E | 200,000 MPa | 1,000 MPa | −5.00·10^−10 mm/MPa | 50.0 %',
    ]);
  });
});

describe('a row of a budget', () => {
  const sum = (formula: string, inputs: Written, readings: MeasuredLists['readings']) => ({
    specs: { a: {}, b: {}, out: { formula, inputs } },
    readings: readings ?? [],
    instruments: [{ id: 'caliper', step: '1 mm', 'stated-error': '1 mm' }],
  });
  const both = [
    { spec: 'a', values: '10', instrument: 'caliper', zero: 'morning' },
    { spec: 'b', values: '20', instrument: 'caliper', zero: 'morning' },
  ];

  test('says what an input is, which spec it comes from, and which value', () => {
    const about = (lists: MeasuredLists, spec: string) =>
      budgetRows(workedIn(measuredProject(lists), spec), 'en-GB').map((row) => [
        ...[row.name, row.what, row.spec, row.value],
      ]);
    expect(about(loads, 'cg')).toEqual([
      ['L', 'wheelbase', 'base', 'r-1'],
      ['Wf', 'front axle load', 'front', 'r-2'],
      ['Wr', 'rear axle load', 'rear', 'r-3'],
    ]);
    expect(about(sum('a + c', { a: 'a', c: '1 mm' }, both), 'out')).toEqual([
      ['a', 'a', 'a', 'r-1'],
      ['c', 'c', undefined, undefined],
    ]);
  });

  test('gives what inputs share a row of its own, where it is the smaller part', () => {
    // u² = 2·(1/12 + 1/3) + 2/3 of what is shared: 5/6 of 3/2 by themselves, 2/3 of 3/2 together.
    expect(rows(sum('a + b', { a: 'a', b: 'b' }, both), 'out')).toEqual([
      'a | 10.00 mm | 0.65 mm | 1.00 | 27.8 %',
      'b | 20.00 mm | 0.65 mm | 1.00 | 27.8 %',
      'r |  |  |  | 44.4 %',
    ]);
  });

  test('leaves a count out of units, and writes a sensitivity of nothing as 0', () => {
    const zero = [
      { spec: 'a', values: '10', instrument: 'caliper' },
      { spec: 'b', values: '0', instrument: 'caliper' },
    ];
    expect(rows(sum('n*a', { n: '3 count', a: 'a' }, zero), 'out')).toEqual([
      'n | 3 count | exact | 10.0 mm | –',
      'a | 10.00 mm | 0.65 mm | 3.00 | 100.0 %',
    ]);
    expect(rows(sum('a*b/c', { a: 'a', b: 'b', c: '1 mm' }, zero), 'out')[0]).toBe(
      'a | 10.00 mm | 0.65 mm | 0 | 0.0 %',
    );
  });

  test('writes numbers in powers of ten from a million on, and below a hundred-thousandth', () => {
    const of = (factor: string) =>
      rows(sum(`${factor}*a`, { a: 'a' }, both), 'out').map((row) => row.split(' | ')[3]);
    expect(['999999', '1000000', '0.00001', '0.000001'].map((factor) => of(factor)[0])).toEqual([
      '1.00·10^6',
      '1.00·10^6',
      '0.0000100',
      '1.00·10^−6',
    ]);
    expect(of('100000')).toEqual(['100,000']);
  });
});

describe('expansion', () => {
  test('goes from u to U', () => {
    expect(expansion(workedIn(measuredProject(loads), 'cg'), 'en-GB')).toEqual([
      'combined u = 1.68 mm, degrees of freedom ∞',
      'U = k·u = 1.96 × 1.68 = 3.30 mm at 95 %',
    ]);
  });

  test('says it when nothing is known', () => {
    const nothing = { u: undefined, nu: Number.POSITIVE_INFINITY, U: undefined, unit: 'mm' };
    expect(expansion(nothing, 'en-GB')).toEqual([
      'nothing is known of the uncertainty of what went in: U is not known',
    ]);
  });
});

test('crossCheckText says the drawn interval in the unit of the spec, and whether it agrees', () => {
  const worked = workedIn(measuredProject(loads), 'cg');
  const drawn = {
    mean: 1.2,
    u: 0.0017,
    low: 1.1967,
    high: 1.2033,
    lowError: 0,
    highError: 0,
    draws: 8192,
  };
  const text = (agrees: boolean) =>
    crossCheckText(worked, { ...drawn, tolerance: 0.00005, agrees }, 'en-GB').replaceAll(
      '\u00a0',
      ' ',
    );
  expect(text(true)).toBe(
    '8,192 draws (JCGM 101) give 1,196.70 to 1,203.30 mm at 95 %, which agrees with ± U.',
  );
  expect(text(false)).toBe(
    '8,192 draws (JCGM 101) give 1,196.70 to 1,203.30 mm at 95 %. That is more apart from ± U than its last digit allows, so the drawn interval is the one shown.',
  );
});
