import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

const book = await inContentFolder({}, (folder) => openBook(folder, { now: NOON }));
const press = book.project('press');
if (press === undefined) throw new Error('the sound folder has a project');

/** Paths of everything inside a value that could still be changed; the doors of a project and a view are followed too. */
function loose(value: unknown, path: string, seen = new Set<unknown>()): string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  // A map can't be frozen; what it holds can.
  const inner = value instanceof Map ? [...value] : Object.entries(value);
  const own = Object.isFrozen(value) || value instanceof Map ? [] : [path];
  return [...own, ...inner.flatMap(([key, item]) => loose(item, `${path}.${key}`, seen))];
}

describe('a book', () => {
  test('can be changed nowhere, however deep', () => {
    expect(loose(book, 'book')).toEqual([]);
    expect(loose(press.now, 'now')).toEqual([]);
    expect(loose(press.asOf(press.firstDay), 'first')).toEqual([]);
  });

  test('with problems can be changed nowhere either', async () => {
    const broken = await inContentFolder(
      { 'press/ledger/hours.csv': ['5:00', '5 hours'] },
      (folder) => openBook(folder, { now: NOON }),
    );
    expect(broken.problems).not.toEqual([]);
    expect(loose(broken, 'book')).toEqual([]);
  });

  test('throws when a row is assigned to', () => {
    const row = press.hours[0] as { hours: number };
    expect(() => {
      row.hours = 0;
    }).toThrow(TypeError);
    expect(press.now.hoursByPhase.total.value).toBe(450);
  });

  test('throws when a row is added', () => {
    const rows = press.now.costs as unknown[];
    expect(() => rows.push({})).toThrow(TypeError);
    expect(press.now.costsByCategory.total.rows).toHaveLength(2);
  });

  test('throws when a view is told another state of a part', () => {
    const part = press.now.parts[0] as { state: string };
    expect(() => {
      part.state = 'sold';
    }).toThrow(TypeError);
  });

  test('gives the same view for the same day', () => {
    expect(press.asOf(press.lastDay)).toBe(press.now);
  });
});
