import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Book } from '../../src/book/types.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';

const bookOf = (changes: Changes, drafts = false): Promise<Book> =>
  inContentFolder(changes, (folder) => openBook(folder, { now: NOON, drafts }));

const codesOf = (book: Book) => book.problems.map(({ code }) => code);
const readingsOf = (book: Book) =>
  book.project('press')?.readings.map(({ reading }) => reading.id) ?? [];

describe('openBook of a sound folder', () => {
  test('has no problem, and everything that the files say', async () => {
    const book = await bookOf({});
    const press = book.project('press');
    expect(book.problems).toEqual([]);
    expect(book.site?.title).toBe('A shed and a press');
    expect(book.projects.map(({ id }) => id)).toEqual(['press']);
    expect(press?.hours.map(({ id, who }) => `${id} ${who}`)).toEqual([
      'h-001 ines',
      'h-002 helper-one',
    ]);
    expect(press?.entries.map(({ slug, number }) => [slug, number])).toEqual([
      ['2025-04-13-the-ram-slides', 1],
    ]);
    expect(press?.photos).toEqual(['ram.jpg']);
  });

  test('runs from the first dated row to the last', async () => {
    const press = (await bookOf({})).project('press');
    expect(press?.firstDay).toBe('2025-03-01');
    expect(press?.lastDay).toBe('2025-04-13');
    expect(press?.now.day).toBe('2025-04-13');
  });

  test('puts rows in order of date, and keeps the order of the file within a day', async () => {
    const lines = ['h-3,2025-03-09', 'h-1,2025-03-02', 'h-4,2025-03-09', 'h-2,2025-03-02'];
    const rows = lines.map((line) => `${line},1:00,teardown,clean,Cleaned\n`).join('');
    const book = await bookOf({
      'press/ledger/hours.csv': `id,date,hours,phase,work,what\n${rows}`,
      'press/entries/2025-04-13-the-ram-slides.mdx': ['h-002, r-002', 'h-2, r-002'],
    });
    expect(book.problems).toEqual([]);
    expect(book.project('press')?.hours.map(({ id }) => id)).toEqual(['h-1', 'h-2', 'h-3', 'h-4']);
  });

  test('leaves drafts out unless they are asked for', async () => {
    const draft: Changes = {
      'press/entries/2025-04-13-the-ram-slides.mdx': [
        'phase: rebuild',
        'phase: rebuild\ndraft: true',
      ],
    };
    expect((await bookOf(draft)).project('press')?.entries).toEqual([]);
    expect((await bookOf(draft, true)).project('press')?.entries).toHaveLength(1);
  });
});

describe('openBook of a folder with mistakes', () => {
  test('leaves a row with a mistake out, names it, and keeps the others', async () => {
    const book = await bookOf({ 'press/ledger/hours.csv': ['5:00', '5 hours'] });
    expect(codesOf(book)).toContain('value/hours');
    expect(book.project('press')?.hours.map(({ id }) => id)).toEqual(['h-001']);
  });

  test('leaves out a reading in a unit of another quantity', async () => {
    const book = await bookOf({
      'press/ledger/readings.csv': ['0.41 0.42 0.41,mm', '41 42 41,kg'],
    });
    expect(codesOf(book)).toContain('unit/other-quantity');
    expect(readingsOf(book)).toEqual(['r-002']);
  });

  test('leaves out a spec with a limit of another quantity, and its readings', async () => {
    const book = await bookOf({ 'press/specs.yaml': ['max: 0.10 mm', 'max: 0.10 kg'] });
    expect(codesOf(book)).toContain('unit/other-quantity');
    expect(book.project('press')?.now.specs.map(({ spec }) => spec.id)).toEqual(['screw-torque']);
    expect(readingsOf(book)).toEqual([]);
  });

  test('refuses a reading without values', async () => {
    const book = await bookOf({
      'press/ledger/readings-more.yaml': `- id: r-003
  spec: ram-play
  date: 2025-04-13
  state: after
  values: []
  unit: mm
  instrument: dial-indicator
`,
    });
    expect(codesOf(book)).toEqual(['value/type']);
    expect(readingsOf(book)).toEqual(['r-001', 'r-002']);
  });

  test('has no project where the project file is broken, and does not throw', async () => {
    const book = await bookOf({ 'press/project.yaml': ['name: Wendlebury press', 'name: [press'] });
    expect(book.projects).toEqual([]);
    expect(codesOf(book)).toContain('yaml/broken');
  });

  test('of an empty folder has only problems', async () => {
    const book = await inContentFolder({}, (folder) =>
      openBook(`${folder}/press/photos`, { now: NOON }),
    );
    expect(book.site).toBeUndefined();
    expect(codesOf(book)).toEqual(['file/missing', 'site/no-project']);
  });
});
