import { expect, it } from 'vitest';
import { problemsOf } from './content-folder.ts';

const codes = async (...args: Parameters<typeof problemsOf>) =>
  (await problemsOf(...args)).filter(({ level }) => level === 'error').map(({ code }) => code);

it('a clock that is set back is told once, not at every row', async () => {
  const [told, ...more] = await problemsOf({}, new Date('2019-01-01T12:00:00Z'));
  expect(more).toEqual([]);
  expect([told?.file, told?.message, told?.fix]).toEqual([
    'press/project.yaml',
    'this machine says that today is 2019-01-01, and 10 dates of rows are later, or a mark is',
    'set its clock',
  ]);
});

it('a mark of a day to come is the clock too, a few rows are not', async () => {
  const changes = { 'press/marks.txt': 'date 2025-06-20\n' };
  expect(await codes(changes)).toContain('date/clock');
  expect(await codes({ 'press/ledger/hours.csv': ['2025-03-08', '2026-03-08'] })).toEqual([
    'date/future',
  ]);
});
