import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownZone, momentIn, wallTimeIn } from '../../src/time/zoned.ts';

const zones = ['UTC', 'Europe/London', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu'];

describe('a time on the wall', () => {
  test('comes back from its moment, but for the hour that comes twice', () => {
    const moments = fc.integer({ min: Date.UTC(1975, 0), max: Date.UTC(2037, 0) });
    fc.assert(
      fc.property(fc.constantFrom(...zones), moments, (zone, at) => {
        const moment = Math.floor(at / 1000) * 1000;
        const wall = wallTimeIn(zone, new Date(moment));
        const back = momentIn(zone, wall);
        expect(wallTimeIn(zone, back)).toBe(wall);
        expect([0, 30, 60]).toContain((moment - back.getTime()) / 60_000);
      }),
    );
  });

  test('that is skipped or comes twice is taken as RFC 5545 says, section 3.3.5', () => {
    const utc = (wall: string) => momentIn('America/New_York', wall).toISOString();
    expect(utc('2007-11-04T01:30:00')).toBe('2007-11-04T05:30:00.000Z');
    expect(utc('2007-03-11T02:30:00')).toBe('2007-03-11T07:30:00.000Z');
  });

  test('needs a zone that is known', () => {
    expect(knownZone('Europe/Berlin')).toBe('Europe/Berlin');
    expect(knownZone('W. Europe Standard Time')).toBeUndefined();
    expect(knownZone('')).toBeUndefined();
  });
});
