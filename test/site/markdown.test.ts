import { expect, test } from 'vitest';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const { page } = await openBuiltDemo();
const article = (path: string) => select(page(path).root, 'article')[0] ?? page(path).root;

test('a table written in an entry is a table, with heads, components in its cells and a frame that scrolls', () => {
  const [frame] = select(article('ostermoor/log/2026-06-27-two-collars/'), '.scroll').filter(
    (item) => attribute(item, 'aria-label') === 'Table',
  );
  const table = frame ? select(frame, 'tr') : [];
  expect(table.slice(0, 1).map((row) => select(row, 'th').map(textOf))).toEqual([
    ['Reading', 'As found', 'Now'],
  ]);
  expect(table.map((row) => textOf(select(row, '*')[0] ?? row))).toEqual([
    'Reading',
    'Nose run-out',
    'Bed straightness',
    'Bed twist',
    'Faced disc of 100 mm',
    'Two collars',
  ]);
  expect(table.slice(1).map((row) => select(row, 'a.spec').length)).toEqual([2, 2, 2, 2, 2]);
});

test('a footnote is a link to its note, and the note links back', () => {
  const root = article('lapwing/log/2025-09-14-glass-first/');
  const marks = select(root, 'sup').flatMap((mark) => select(mark, 'a'));
  expect(marks.map(textOf)).toEqual(['1']);
  const [note] = select(root, attribute(marks[0] ?? (root.childNodes[0] as never), 'href') ?? '#');
  expect(note && textOf(note)).toMatch(
    /^A toughened pane can't be cut after it has been toughened\./,
  );
  const back = note ? select(note, 'a').map((link) => attribute(link, 'href')) : [];
  expect(back).toEqual([`#${attribute(marks[0] as never, 'id')}`]);
});

test('a task list has boxes that say whether the task is done, and cannot be changed', () => {
  const boxes = select(article('lapwing/log/2025-09-14-glass-first/'), 'input');
  const shown = boxes.map((box) => [
    attribute(box, 'type'),
    attribute(box, 'checked') !== undefined,
    attribute(box, 'aria-label'),
    attribute(box, 'disabled') !== undefined,
  ]);
  const done = ['checkbox', true, 'done', true];
  expect(shown).toEqual([done, done, done, ['checkbox', false, 'to do', true], done]);
});

test('quotes and primes stay as typed', () => {
  const words = textOf(article('lapwing/log/2025-09-14-glass-first/'));
  expect(words).toContain('"just cut one down"');
  expect(words).not.toMatch(/[“”]/);
});
