import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/time/day.ts';
import { noonIn } from '../../src/time/noon.ts';

describe('noonIn', () => {
  test.each([
    ['Europe/London', '2025-03-08', '2025-03-08T12:00:00+00:00'],
    ['Europe/London', '2025-07-26', '2025-07-26T12:00:00+01:00'],
    ['America/St_Johns', '2025-01-15', '2025-01-15T12:00:00-03:30'],
    ['Asia/Kolkata', '2025-07-26', '2025-07-26T12:00:00+05:30'],
    ['Pacific/Auckland', '2025-01-15', '2025-01-15T12:00:00+13:00'],
    ['UTC', '2025-07-26', '2025-07-26T12:00:00+00:00'],
  ])('in %s on %s is %s', (zone, day, noon) => {
    expect(noonIn(zone, day as Day)).toBe(noon);
  });

  test('on the day the clocks change it has the offset of after the change', () => {
    expect(noonIn('Europe/London', '2025-03-30' as Day)).toBe('2025-03-30T12:00:00+01:00');
    expect(noonIn('Europe/London', '2025-10-26' as Day)).toBe('2025-10-26T12:00:00+00:00');
    expect(noonIn('America/New_York', '2025-03-09' as Day)).toBe('2025-03-09T12:00:00-04:00');
    expect(noonIn('Pacific/Auckland', '2025-09-28' as Day)).toBe('2025-09-28T12:00:00+13:00');
  });

  test('is noon on the wall there, and the same day there, all over a year', () => {
    for (const zone of ['Europe/London', 'America/Los_Angeles', 'Pacific/Auckland', 'Asia/Tokyo'])
      for (let month = 1; month <= 12; month++) {
        const day = `2025-${String(month).padStart(2, '0')}-28` as Day;
        const wall = new Intl.DateTimeFormat('sv', {
          timeZone: zone,
          dateStyle: 'short',
          timeStyle: 'short',
        }).format(new Date(noonIn(zone, day)));
        expect(wall).toBe(`${day} 12:00`);
      }
  });
});
