import { expect, test } from 'vitest';
import { showWrittenDecimal } from '../../src/units/written-decimal.ts';

test.each([
  ['0.50', 'en-GB', '0.50'],
  ['0.50', 'de-DE', '0,50'],
  ['2286', 'en-GB', '2286'],
  ['2286.5', 'de-DE', '2286,5'],
])('%s in %s is %s', (written, language, shown) => {
  expect(showWrittenDecimal(written, language)).toBe(shown);
});
