import { expect, test } from 'vitest';
import { untoldIn } from '../../src/book/untold.ts';
import { readContent } from '../../src/read/content.ts';
import { parseDay } from '../../src/time/day.ts';

test('tells the rows of a stretch of days that stand in no entry', async () => {
  const { projects } = await readContent('content');
  const lapwing = projects.find(({ id }) => id === 'lapwing');
  if (lapwing === undefined) throw new Error('the demo has no such project');
  const after = parseDay('2025-10-12');
  const until = parseDay('2025-10-26');
  const { rows } = untoldIn(lapwing, { after, until });
  expect(rows.map(({ id }) => id)).toContain('c-040');
  expect(rows.every(({ day }) => day > '2025-10-12' && day <= '2025-10-26')).toBe(true);

  const told = new Set(lapwing.entries.flatMap(({ value }) => value.tells ?? []));
  expect(rows.filter(({ id }) => told.has(id))).toEqual([]);
  const [row] = rows;
  expect(row).toMatchObject({ id: 'c-040', file: 'lapwing/ledger/costs-2025.csv', line: 41 });
});
