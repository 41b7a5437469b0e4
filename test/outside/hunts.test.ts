import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Project } from '../../src/book/types.ts';
import { huntsOn } from '../../src/parts/hunt.ts';
import { originsOn } from '../../src/parts/origins.ts';
import { overdueReturns } from '../../src/parts/preparations.ts';
import { cell, contentDir, listIn, type Row, rowsOf, stateOf, sumBy } from './raw-ledger.ts';

// The demo's hunts, shares and returns a second way: rows read by csv-parse and yaml, masses in grams, days by Date.

const book = await openBook(contentDir, { now: new Date('2027-01-01T12:00:00Z') });

const standing = (rows: readonly Row[]) => {
  const replaced = new Set(rows.map((row) => cell(row, 'corrects')));
  return rows.filter((row) => !replaced.has(cell(row, 'id')));
};
const dayNumber = (text: string) => Date.UTC(...datePieces(text)) / 86_400_000;

function datePieces(text: string): [number, number, number] {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  return [year, month - 1, day];
}

const grams = (row: Row) => {
  const [digits, unit] = cell(row, 'mass').split(' ');
  if (unit !== 'kg') throw new Error(`a mass in ${unit}: teach the test that unit`);
  return Math.round(Number(digits) * 1000);
};
const pieces = (row: Row) => Number(cell(row, 'quantity') || '1');
const grouped = (groups: readonly { key: string; figure: { value: number } }[], scale = 1) =>
  Object.fromEntries(
    groups
      .map(({ key, figure }) => [key, Math.round(figure.value * scale)] as const)
      .filter(([, size]) => size !== 0)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

function recomputedDays(project: Project): Record<string, number> {
  const searches = standing(rowsOf(project.id, 'searches'));
  const hunted = standing(rowsOf(project.id, 'parts')).flatMap((part) => {
    const tries = searches.filter((row) => cell(row, 'part') === cell(part, 'id'));
    const starts = [cell(part, 'wanted'), ...tries.map((row) => cell(row, 'date'))].filter(Boolean);
    const [start] = starts.sort();
    const [end = project.lastDay] = ['ordered', 'got', 'fitted']
      .map((step) => cell(part, step))
      .filter(Boolean)
      .sort();
    return start === undefined
      ? []
      : [{ id: cell(part, 'id'), days: dayNumber(end) - dayNumber(start) }];
  });
  return sumBy(
    hunted,
    ({ id }) => id,
    ({ days }) => Math.max(0, days),
  );
}

describe.each(book.projects.map((project) => ({ id: project.id, project })))(
  'in $id',
  ({ id, project }) => {
    const parts = standing(rowsOf(id, 'parts')).filter((row) => {
      const isLeftOver = stateOf(row) === 'got' && cell(row, 'for-sale') !== '';
      return ['fitted', 'got'].includes(stateOf(row)) && !isLeftOver;
    });

    test('pieces by source are those counted from the rows', () => {
      expect(grouped(originsOn(project.now).pieces.groups)).toEqual(
        sumBy(parts, (row) => cell(row, 'source'), pieces),
      );
    });

    test('masses by source are those added up in grams', () => {
      const weighed = parts.filter((row) => cell(row, 'mass') !== '');
      expect(grouped(originsOn(project.now).mass.groups, 1000)).toEqual(
        sumBy(
          weighed,
          (row) => cell(row, 'source'),
          (row) => grams(row) * pieces(row),
        ),
      );
    });

    test('days hunted are those between the dates of the rows', () => {
      const days = huntsOn(project.now).hunts.map(({ item, days: count }) => [item.part.id, count]);
      expect(Object.fromEntries(days)).toEqual(recomputedDays(project));
    });

    test('tries and lists that promised in vain are those counted from the rows', () => {
      const results = sumBy(standing(rowsOf(id, 'searches')), (row) => cell(row, 'result'));
      const { tries, notHeld } = huntsOn(project.now);
      expect(tries.value).toBe(Object.values(results).reduce((sum, count) => sum + count, 0));
      expect(notHeld.value).toBe(results['listed-not-held'] ?? 0);
    });

    test('overdue returns are those sent out, due, and without a day back', () => {
      const late = standing(rowsOf(id, 'preparations')).filter(
        (row) =>
          cell(row, 'out') === 'true' &&
          cell(row, 'back') === '' &&
          cell(row, 'due') !== '' &&
          cell(row, 'due') < project.lastDay,
      );
      expect(
        overdueReturns(project.now).map(({ row, overdue }) => [row.rowId, row.parts, overdue]),
      ).toEqual(
        late.map((row) => [
          cell(row, 'id'),
          listIn(row, 'parts'),
          dayNumber(project.lastDay) - dayNumber(cell(row, 'due')),
        ]),
      );
    });
  },
);

test('the demo has something of each sort to show', () => {
  const lapwing = book.project('lapwing');
  if (lapwing === undefined) throw new Error('the demo has no lapwing');
  const open = huntsOn(lapwing.now).hunts.filter(({ found }) => found === undefined);
  expect(open.length).toBeGreaterThanOrEqual(2);
  expect(overdueReturns(lapwing.now)).toHaveLength(1);
  expect(lapwing.preparations.length).toBeGreaterThanOrEqual(15);
});
