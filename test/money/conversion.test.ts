import { describe, expect, test } from 'vitest';
import { convert } from '../../src/money/money.ts';

const eur = (minor: number) => ({ minor, currency: 'EUR' });

describe('convert', () => {
  test('multiplies by the rate as written: 118.00 EUR at 0.8648 is 102.0464, so 102.05', () => {
    expect(convert(eur(11800), '0.8648', 'GBP')).toEqual({ minor: 10205, currency: 'GBP' });
  });

  test('rounds half away from zero: 0.5 of a penny goes up, a hair less stays', () => {
    expect(convert(eur(1), '0.5', 'GBP').minor).toBe(1);
    expect(convert(eur(1), '0.4999', 'GBP').minor).toBe(0);
    expect(convert(eur(3), '0.5', 'GBP').minor).toBe(2);
  });

  test('rounds a credit as far as a payment, so that a refund takes all of it back', () => {
    expect(convert(eur(-1), '0.5', 'GBP').minor).toBe(-1);
    expect(convert(eur(-3), '0.5', 'GBP').minor).toBe(-2);
  });

  test('rounds a half exactly where a double would fall short of it', () => {
    // 1.005 × 100 is 100.49999999999999 in binary.
    expect(convert(eur(100), '1.005', 'GBP').minor).toBe(101);
  });

  test('shifts between currencies of other exponents', () => {
    expect(convert(eur(1000), '161.25', 'JPY')).toEqual({ minor: 1613, currency: 'JPY' });
    expect(convert({ minor: 1000, currency: 'JPY' }, '0.0062', 'EUR').minor).toBe(620);
    expect(convert({ minor: 1, currency: 'JPY' }, '0.002', 'KWD').minor).toBe(2);
  });

  test('is exact where the product has more digits than a double', () => {
    // 9 007 199 254 740.99 × 0.9999999999 = 9 007 199 253 840.2700745259…
    expect(convert(eur(900719925474099), '0.9999999999', 'GBP').minor).toBe(900719925384027);
  });
});
