import { expect, test } from 'vitest';
import { shareText } from '../../src/plan/forecast-words.ts';

test('a driver is told in per cent of the draws that it decides, or not at all where it decides all of them', () => {
  const driver = { by: 'phase', id: 'strip', correlation: undefined } as const;
  expect([0, 0.004, 0.005, 0.63, 1].map((share) => shareText({ ...driver, share }))).toEqual([
    ...['0 %', '0 %', '1 %', '63 %', '100 %'],
  ]);
  expect(shareText({ ...driver, share: undefined })).toBeUndefined();
});
