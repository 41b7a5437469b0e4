import { describe, expect, test } from 'vitest';
import { isoDuration, parseDuration, showDuration } from '../../src/time/duration.ts';

describe('parseDuration', () => {
  test.each([
    ['2:30', 150],
    ['0:05', 5],
    ['141:45', 8505],
    ['2.5', 150],
    ['2.5 h', 150],
    ['2h', 120],
    ['0.25', 15],
    ['2.35', 141],
    ['150 min', 150],
    ['0:00', 0],
  ])('reads %j as %i minutes', (text, minutes) => {
    expect(parseDuration(text)).toBe(minutes);
  });

  test.each(['2:5', '2:60', '-1:00', '2,5', '1.333', 'two hours', '2:30:00', '90m', ''])(
    'refuses %j',
    (text) => {
      expect(parseDuration(text)).toBeUndefined();
    },
  );
});

test('showDuration does not cut hours at a day', () => {
  expect(showDuration(150)).toBe('2:30');
  expect(showDuration(8505)).toBe('141:45');
  expect(showDuration(5)).toBe('0:05');
  expect(showDuration(0)).toBe('0:00');
});

test('showDuration puts a true minus before hours in hand', () => {
  expect(showDuration(-75)).toBe('−1:15');
  expect(showDuration(-5)).toBe('−0:05');
});

test('isoDuration is an ISO 8601 duration in hours and minutes', () => {
  expect(isoDuration(150)).toBe('PT2H30M');
  expect(isoDuration(8505)).toBe('PT141H45M');
});
