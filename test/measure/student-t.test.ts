import { expect, test } from 'vitest';
import { coverageFactor } from '../../src/measure/student-t.ts';

test.for([0, 1, -0.1, 1.1, Number.NaN])('there is no factor for a coverage of %d', (p) => {
  expect(() => coverageFactor(p, 4)).toThrow(
    new RangeError(`coverage probability ${p} is not between 0 and 1`),
  );
});

test.for([0.9, 0, Number.NaN])('there is no factor for %d degrees of freedom', (nu) => {
  expect(() => coverageFactor(0.95, nu)).toThrow(
    new RangeError(`degrees of freedom ${nu} are fewer than 1`),
  );
});

test('it is that of the normal distribution from ten million degrees of freedom on, without a step', () => {
  const [below, above] = [coverageFactor(0.95, 1e7), coverageFactor(0.95, 1e7 + 1)];
  expect(below).toBeCloseTo(above, 6);
  expect(above).toBe(coverageFactor(0.95, Number.POSITIVE_INFINITY));
});
