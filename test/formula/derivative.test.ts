import { describe, expect, test } from 'vitest';
import { slope } from './read-formula.ts';

const at = { a: 2, b: 3 };

describe('the derivative to a, at a = 2 and b = 3, of', () => {
  test.each([
    ['b', 0],
    ['a', 1],
    ['a*b - a/b', 3 - 1 / 3],
    ['b/a', -3 / 4],
    ['a^b', 12],
    ['b^a', 9 * Math.log(3)],
    ['a^a', 4 * (Math.log(2) + 1)],
    ['(a - 5)^2', -6],
    ['a^-b', -3 / 16],
    ['sqrt(a*8)', 1],
    ['abs(a - b)', -1],
    ['-(-a)', 1],
    ['sin(a)', Math.cos(2)],
    ['cos(a)', -Math.sin(2)],
    ['tan(a)', 1 / Math.cos(2) ** 2],
    ['asin(a/b)', 1 / Math.sqrt(5)],
    ['acos(a/b)', -1 / Math.sqrt(5)],
    ['atan(a)', 1 / 5],
    ['exp(2*a)', 2 * Math.exp(4)],
    ['log(a)', 0.5],
    ['g_n*a + pi*b', 9.80665],
    ['sqrt(9)*a + abs(-4)*b + log(10)', 3],
  ])('%s is as in the tables', (text, value) => {
    expect(slope(text, 'a', at)).toBeCloseTo(value, 12);
  });
});
