import { describe, expect, test } from 'vitest';
import { momentAddress, parseMoment, showMoment } from '../../src/time/moment.ts';

describe('parseMoment', () => {
  test('reads minutes and seconds, and hours before them', () => {
    expect(parseMoment('4:32')).toBe(272);
    expect(parseMoment('0:00')).toBe(0);
    expect(parseMoment('1:04:32')).toBe(3872);
  });

  test('lets minutes pass 59 only where no hours stand before them', () => {
    expect(parseMoment('72:10')).toBe(4330);
    expect(parseMoment('1:72:10')).toBeUndefined();
  });

  test.each(['4', '4:60', '4:5', '4:32.5', '272s', ''])('refuses %j', (text) => {
    expect(parseMoment(text)).toBeUndefined();
  });
});

describe('showMoment', () => {
  test.each(['0:00', '0:07', '4:32', '59:59', '1:00:00', '1:04:32', '12:00:09'])(
    'shows %s as it was typed',
    (text) => {
      expect(showMoment(parseMoment(text) ?? Number.NaN)).toBe(text);
    },
  );

  test('shows minutes past 59 as hours and minutes', () => {
    expect(showMoment(parseMoment('72:10') ?? Number.NaN)).toBe('1:12:10');
  });
});

describe('momentAddress', () => {
  test('adds a media fragment by the usual template', () => {
    expect(momentAddress('{address}#t={seconds}', 'https://video.example/a', 272)).toBe(
      'https://video.example/a#t=272',
    );
  });

  test('fills in a place more than once, and leaves other braces alone', () => {
    expect(momentAddress('{address}?at={seconds}&s={seconds}&{x}', 'https://v.example', 5)).toBe(
      'https://v.example?at=5&s=5&{x}',
    );
  });
});

test.each([
  [0, '0:00'],
  [9, '0:09'],
  [61, '1:01'],
  [600, '10:00'],
  [3599, '59:59'],
  [3600, '1:00:00'],
  [36_005, '10:00:05'],
])('%i s is %s', (seconds, shown) => {
  expect(showMoment(seconds)).toBe(shown);
});
