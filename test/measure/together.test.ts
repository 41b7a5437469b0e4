import { describe, expect, test } from 'vitest';
import { budgetOf } from '../../src/measure/budget.ts';
import { correlation } from '../../src/measure/uncertain.ts';
import { measuredProject, valuesIn, workedIn } from './measured-project.ts';

const specs = {
  a: {},
  b: {},
  gap: { formula: 'a - b', inputs: { a: 'a', b: 'b' } },
};

function together(a: string, b: string, rest: Readonly<Record<string, string>> = {}) {
  const project = measuredProject({
    specs,
    readings: [
      { spec: 'a', values: a, together: 'set' },
      { spec: 'b', values: b, together: 'set', ...rest },
    ],
  });
  const [first] = valuesIn(project, 'a');
  const [second] = valuesIn(project, 'b');
  if (first?.kind !== 'read' || second === undefined) throw new Error('a reading is missing');
  return { first, second, gap: workedIn(project, 'gap') };
}

describe('readings taken together', () => {
  test('have the scatter that each has alone', () => {
    const { first } = together('1.1 1.3 1.2', '2.0 2.1 2.5');
    expect(first.u).toBeCloseTo(0.1 / Math.sqrt(3), 14);
    expect(first.nu).toBeCloseTo(2, 12);
    expect(budgetOf(first, 'en-GB').filter((line) => line.includes('repeats'))).toEqual([
      'u of repeats: s/√n = 0.1/√3 = 0.0577 mm',
    ]);
  });

  test('that move alike are wholly correlated, and their difference does not scatter', () => {
    const { first, second, gap } = together('1.1 1.3 1.2', '2.1 2.3 2.2');
    expect(correlation(first.components, second.components)).toBeCloseTo(1, 12);
    expect(gap.u ?? 0).toBeLessThan(1e-14);
  });

  test('that move against each other double it', () => {
    const { gap } = together('1.1 1.3 1.2', '2.3 2.1 2.2');
    expect(gap.u).toBeCloseTo(0.2 / Math.sqrt(3), 14);
    expect(gap.nu).toBeCloseTo(2, 12);
  });

  test('stay in their pairs when one value of a set does not count', () => {
    // Without the second set, 1.1 and 1.2 stand beside 2.1 and 2.2, not beside 2.1 and 9.9.
    const out = { excluded: '2', because: 'slipped' };
    const { first, second } = together('1.1 1.3 1.2', '2.1 9.9 2.2', out);
    // Deviations −0.1, 0.1, 0 and −0.05, ·, 0.05: covariance 0.005, over 0.1·√2 and 0.05·√2.
    const want = (0.1 * 0.05) / (Math.hypot(0.1, 0.1) * Math.hypot(0.05, 0.05));
    expect(correlation(first.components, second.components)).toBeCloseTo(want, 12);
  });
});
