import { describe, expect, test } from 'vitest';
import {
  addDays,
  type Day,
  dayIn,
  daysBetween,
  earliestDay,
  guessDay,
  latestDay,
  parseDay,
  showDay,
  showShortDay,
} from '../../src/time/day.ts';

const day = (text: string) => parseDay(text) as Day;

describe('parseDay', () => {
  test('reads a calendar date of ISO 8601', () => {
    expect(parseDay('2025-03-08')).toBe('2025-03-08');
  });

  test('knows leap years, those of centuries too', () => {
    expect(parseDay('2024-02-29')).toBe('2024-02-29');
    expect(parseDay('2025-02-29')).toBeUndefined();
    expect(parseDay('2000-02-29')).toBe('2000-02-29');
    expect(parseDay('1900-02-29')).toBeUndefined();
  });

  test.each(['2025-04-31', '2025-13-01', '2025-00-10', '2025-3-8', '20250308', '08/03/2025', ''])(
    'refuses %j',
    (text) => {
      expect(parseDay(text)).toBeUndefined();
    },
  );
});

describe('guessDay', () => {
  test('turns year-first dates round to the one day they can mean', () => {
    expect(guessDay('2025/3/8')).toBe('2025-03-08');
    expect(guessDay('2025.12.1')).toBe('2025-12-01');
  });

  test('guesses day and month only when one of them is over 12', () => {
    expect(guessDay('13/12/2025')).toBe('2025-12-13');
    expect(guessDay('12-13-2025')).toBe('2025-12-13');
    expect(guessDay('12/11/2025')).toBeUndefined();
  });

  test('guesses no day that does not exist', () => {
    expect(guessDay('31/4/2025')).toBeUndefined();
    expect(guessDay('last Tuesday')).toBeUndefined();
  });
});

describe('counting days', () => {
  test('goes over the end of February and of a year', () => {
    expect(daysBetween(day('2024-02-28'), day('2024-03-01'))).toBe(2);
    expect(daysBetween(day('2025-12-31'), day('2026-01-01'))).toBe(1);
    expect(daysBetween(day('2025-03-08'), day('2025-03-01'))).toBe(-7);
  });

  test('is not off by an hour when the clocks change', () => {
    // In London they went forward on 2025-03-30 and back on 2025-10-26.
    expect(daysBetween(day('2025-03-29'), day('2025-03-31'))).toBe(2);
    expect(daysBetween(day('2025-10-25'), day('2025-10-27'))).toBe(2);
  });

  test('and adding them are each the other way round', () => {
    expect(addDays(day('2024-02-28'), 2)).toBe('2024-03-01');
    expect(addDays(day('2026-01-01'), -1)).toBe('2025-12-31');
  });
});

test('latestDay and earliestDay pass over what is absent', () => {
  const days = [undefined, day('2025-03-08'), day('2024-12-31'), undefined, day('2025-01-01')];
  expect(latestDay(days)).toBe('2025-03-08');
  expect(earliestDay(days)).toBe('2024-12-31');
  expect(latestDay([undefined])).toBeUndefined();
});

test('dayIn gives the day on the wall of that zone', () => {
  const halfPastEleven = new Date('2025-07-26T22:30:00Z');
  expect(dayIn('UTC', halfPastEleven)).toBe('2025-07-26');
  expect(dayIn('Europe/Berlin', halfPastEleven)).toBe('2025-07-27');
  expect(dayIn('America/New_York', halfPastEleven)).toBe('2025-07-26');
  expect(dayIn('Pacific/Auckland', halfPastEleven)).toBe('2025-07-27');
});

test('a day is shown in the words of the language', () => {
  expect(showDay(day('2025-03-08'), 'en-GB')).toBe('8 March 2025');
  expect(showDay(day('2025-03-08'), 'en-US')).toBe('March 8, 2025');
  expect(showDay(day('2025-03-08'), 'de')).toBe('8. März 2025');
  expect(showShortDay(day('2025-03-08'), 'en-GB')).toBe('8 Mar 2025');
});
