import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { told } from '../words/told.ts';

const content = fileURLToPath(new URL('../../content', import.meta.url));
const book = await openBook(content, { now: new Date('2026-12-31T12:00:00Z') });

describe('the demo', () => {
  test('has two projects and no error', () => {
    expect(book.problems.filter(({ level }) => level === 'error')).toEqual([]);
    expect(book.projects.map(({ id }) => id)).toEqual(['lapwing', 'ostermoor']);
  });

  test('warns of nothing but readings with a gauge past its calibration', () => {
    expect([...new Set(book.problems.map(({ code }) => code))]).toEqual(['reading/calibration']);
  });

  test('gives the same figures whenever it is opened', async () => {
    const later = await openBook(content, { now: new Date('2031-01-01T00:00:00Z') });
    for (const { id, now } of book.projects) {
      const then = later.project(id)?.now;
      expect(then?.day).toBe(now.day);
      expect(told(then?.costsByCategory)).toEqual(told(now.costsByCategory));
      expect(told(then?.phases)).toEqual(told(now.phases));
      expect(JSON.stringify(then?.specs)).toBe(JSON.stringify(now.specs));
    }
  });

  test('shows every kind of verdict and of change', () => {
    const specs = book.projects.flatMap(({ now }) => now.specs);
    expect(new Set(specs.map(({ verdict }) => verdict))).toEqual(
      new Set(['meets', 'does not meet', 'undecided', undefined]),
    );
    expect(new Set(specs.flatMap(({ change }) => (change ? [change.changed] : [])))).toEqual(
      new Set([true, false]),
    );
  });
});
