import { describe, expect, test } from 'vitest';
import { dimensionOfTree, isDimension } from '../../src/formula/dimension.ts';
import { dimensionOf, showDimension } from '../../src/units/dimensions.ts';
import { treeFrom } from './read-formula.ts';

const kinds = {
  L: dimensionOf.length,
  m: dimensionOf.mass,
  F: dimensionOf.force,
  k: dimensionOf.stiffness,
  T: dimensionOf.torque,
  n: dimensionOf.count,
  phi: dimensionOf.angle,
};

/** The dimension of a formula over the inputs above, in base units, or what does not fit. */
function unitsOf(text: string): string {
  const result = dimensionOfTree(treeFrom(text, Object.keys(kinds)), kinds);
  return isDimension(result) ? showDimension(result) : result.wrong;
}

describe('dimensionOfTree works out', () => {
  test.each([
    ['L*L', 'm^2'],
    ['F/L', 'kg·s^-2'],
    ['F*L - T', 'm^2·kg·s^-2'],
    ['sqrt(k/m)', 's^-1'],
    ['sqrt(L)', 'm^0.5'],
    ['sqrt(L)^2 + L', 'm'],
    ['L^-2', 'm^-2'],
    ['L^1.5', 'm^1.5'],
    ['L^0', 'a plain number'],
    ['-L + abs(L)', 'm'],
    ['max(L, 2*L)', 'm'],
    ['m*g_n', 'm·kg·s^-2'],
    ['pi*n', 'a plain number'],
    ['(1 + n)^phi', 'a plain number'],
    ['sin(phi) + L/L', 'a plain number'],
    ['L < 2*L', 'a plain number'],
    ['(L < 2*L)*F', 'm·kg·s^-2'],
  ])('%s: %s', (text, units) => {
    expect(unitsOf(text)).toBe(units);
  });
});

describe('dimensionOfTree refuses', () => {
  test.each([
    ['L + m', '"+" between m and kg'],
    ['L - 1', '"-" between m and a plain number'],
    ['min(L, L, m)', '"min" between m and kg'],
    ['L < m', '"<" between m and kg'],
    ['2*(L + F) + k', '"+" between m and m·kg·s^-2'],
    ['sin(L)', 'sin of m'],
    ['exp(-m)', 'exp of kg'],
    ['log(L/m)', 'log of m·kg^-1'],
    ['L^n', 'a power of m that is no plain number'],
    ['L^(1/2)', 'a power of m that is no plain number'],
    ['2^L', 'a power with an exponent of m'],
    ['n^(L/m)', 'a power with an exponent of m·kg^-1'],
  ])('%s: %s', (text, wrong) => {
    expect(unitsOf(text)).toBe(wrong);
  });
});
