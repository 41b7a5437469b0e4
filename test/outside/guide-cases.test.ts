import { describe, expect, test } from 'vitest';
import { figuresIn, measuredProject, workedIn } from '../measure/measured-project.ts';

const shareOff = (found: number | undefined, exact: number) =>
  Math.abs((found ?? Number.NaN) / exact - 1);

// Height of the centre of gravity by a raised axle after W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE, 1995),
// chapter 18, with wheels of one size: h = R + L·(W′ − Wf)/(W·tan θ), sin θ = H/L. The uncertainty and its sensitivities were worked
// out by the Python package uncertainties 3.1.6 from the standard uncertainties below, W, Wf and W′ taken as independent.
describe('uncertainty of a height of the centre of gravity, against Python’s uncertainties', () => {
  const inputs = [
    ['L', 'length', 'mm', '2400', '1.5', 0.400208279],
    ['W', 'mass', 'kg', '1200', '1', -0.387298335],
    ['Wf', 'mass', 'kg', '640', '0.7', -7.745966692],
    ['Wq', 'mass', 'kg', '700', '0.7', 7.745966692],
    ['H', 'length', 'mm', '600', '2', -0.826236447],
    ['R', 'length', 'mm', '305', '2', 1],
  ] as const;
  const specOf = (name: string) => `in-${name.toLowerCase()}`;
  const project = measuredProject({
    specs: {
      ...Object.fromEntries(
        inputs.map(([name, quantity, unit]) => [specOf(name), { quantity, unit }]),
      ),
      height: {
        formula: 'R + L*(Wq - Wf)/(W*tan(asin(H/L)))',
        inputs: Object.fromEntries(inputs.map(([name]) => [name, specOf(name)])),
      },
    },
    readings: inputs.map(([name, , , values]) => ({
      spec: specOf(name),
      values,
      instrument: `for-${specOf(name)}`,
    })),
    instruments: inputs.map(([name, quantity, unit, , u]) => ({
      ...{ id: `for-${specOf(name)}`, quantity },
      ...{ 'certificate-u': `${u} ${unit}`, 'certificate-k': '1' },
    })),
  });
  const height = workedIn(project, 'height');

  test('the height is 769.758 mm with u = 8.127 mm', () => {
    expect(shareOff(height.value, 769.7580015448901)).toBeLessThan(1e-12);
    expect(shareOff(height.u, 8.12656395204)).toBeLessThan(1e-9);
  });

  test.each(inputs)('the sensitivity to %s is as theirs', (name, _, unit, ...[, , theirs]) => {
    const line = height.base.budget.find((item) => item.name === name);
    // From metres for a base unit to millimetres for one of the input's own.
    const found = (line?.sensitivity ?? 0) * (unit === 'mm' ? 1 : 1000);
    expect(Math.abs(found - theirs)).toBeLessThan(6e-10);
  });

  test('the shares of the budget add up to the whole', () => {
    const { budget, sharedShare } = height.base;
    const sum = budget.reduce((all, { share }) => all + share, sharedShare);
    expect(sum).toBeCloseTo(1, 12);
  });
});

// ISO 14253-1, the decision rule: a value with U is conforming when all of it is within the limits, nonconforming when all of it is
// outside, and else neither is proved. Here for a derived value: the difference of two lengths with certificates of 0.002 mm.
describe('ISO 14253-1 for a value that was worked out', () => {
  const verdict = (shaft: string) => {
    const project = measuredProject({
      specs: {
        bore: {},
        shaft: {},
        play: {
          ...{ formula: 'b - s', inputs: { b: 'bore', s: 'shaft' } },
          ...{ min: '0.020 mm', max: '0.040 mm' },
        },
      },
      readings: [
        { spec: 'bore', values: '25.000', instrument: 'gauge' },
        { spec: 'shaft', values: shaft, instrument: 'gauge' },
      ],
      // u of each is 0.001 mm, of the difference 0.001·√2 mm, and U = 1.96·0.001·√2 = 0.002 772 mm.
      instruments: [{ id: 'gauge', 'certificate-u': '0.002 mm' }],
    });
    return figuresIn(project, 'play').verdict;
  };

  test.each([
    ['24.970', 'meets'],
    ['24.9772', 'meets'],
    ['24.9773', 'undecided'],
    ['24.9800', 'undecided'],
    ['24.9827', 'undecided'],
    ['24.9828', 'does not meet'],
    ['24.9572', 'does not meet'],
    ['24.9573', 'undecided'],
  ])('a shaft of %s mm in a bore of 25 mm %s', (shaft, want) => {
    expect(verdict(shaft)).toBe(want);
  });
});
