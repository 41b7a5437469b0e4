import { expect, test } from 'vitest';
import { currencyCodes } from '../../src/money/currency.ts';
import { showWritten } from '../../src/money/written.ts';

const pounds = { currency: 'GBP', language: 'en-GB' };

test('an amount as written is shown in the project’s currency, or in its own', () => {
  expect(showWritten({ decimal: '12.5' }, pounds)).toBe('£12.50');
  expect(showWritten({ decimal: '12.5', currency: 'EUR' }, pounds)).toBe('€12.50');
  expect(showWritten({ decimal: '1250', currency: 'JPY' }, pounds)).toBe('JP¥1,250');
});

test('an amount that its currency does not have is shown as it was typed, and not made up', () => {
  expect(showWritten({ decimal: '12.505' }, pounds)).toBe('12.505');
  expect(showWritten({ decimal: '3', currency: 'GBX' }, pounds)).toBe('3');
});

test('currency codes are listed in the order of the alphabet, each once', () => {
  expect(currencyCodes.slice(0, 3)).toEqual(['AED', 'AFN', 'ALL']);
  expect(currencyCodes).toEqual([...new Set(currencyCodes)].sort());
});
