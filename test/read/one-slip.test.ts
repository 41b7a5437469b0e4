import { describe, expect, test } from 'vitest';
import { oneSlipFrom } from '../../src/read/one-slip.ts';

describe('oneSlipFrom', () => {
  test.each([
    ['teardwon', 'teardown'],
    ['teardow', 'teardown'],
    ['tear-down', 'teardown'],
    ['Teardown', 'teardown'],
    ['tesrdown', 'teardown'],
    ['door_seal_side', 'door-seal-side'],
  ])('takes %s for %s', (typed, word) => {
    expect(oneSlipFrom(typed, ['teardown', 'rebuild', 'door-seal-side'])).toBe(word);
  });

  test.each([
    ['c-104', ['c-105']],
    ['door-lh', ['door-rh']],
    ['door-seat', ['door-seal']],
    ['bed-a', ['bed-b']],
    ['seat-inner', ['seat-outer']],
    ['unpaid', ['paid']],
    ['springs', ['spring', 'springss']],
    ['axle-2', ['axle']],
  ])('leaves %s to the builder beside %j', (typed, known) => {
    expect(oneSlipFrom(typed, known)).toBeUndefined();
  });
});
