import { describe, expect, test } from 'vitest';
import { readCalendar } from '../../src/import/calendar.ts';
import { findMapping } from '../../src/import/find-mapping.ts';
import { readContent } from '../../src/read/content.ts';
import { inContentFolder } from '../check/content-folder.ts';

/** Which mapping the name of a file finds. */
async function mappingOf(pattern: string, file: string): Promise<string | undefined> {
  const imports = `- { id: bank, files: ${JSON.stringify(pattern)}, kind: costs }\n`;
  const content = await inContentFolder({ 'press/imports.yaml': imports }, (folder) =>
    readContent(folder),
  );
  const found = findMapping(content, { file, project: undefined, as: undefined });
  return 'mapping' in found ? found.mapping?.id : undefined;
}

describe('a pattern for names of files', () => {
  test.each([
    ['bank-*.csv', 'bank-2025.csv', 'bank'],
    ['bank-*.csv', 'BANK-.CSV', 'bank'],
    ['bank.csv', 'bank-2025.csv', undefined],
    ['bank-*', 'bank-2025.refused-2.csv', 'bank'],
    ['bank.csv', 'bank.csv.refused.csv', 'bank'],
    ['*2025*.csv', 'a-2025-b.csv', 'bank'],
    ['a*a.csv', 'a.csv', undefined],
    ['b.nk', 'bank', undefined],
  ])('%s, and %s', async (pattern, file, id) => {
    expect(await mappingOf(pattern, file)).toBe(id);
  });

  test('is no trap, however many signs stand for others', async () => {
    const started = performance.now();
    expect(await mappingOf(`${'*a'.repeat(60)}b`, `${'a'.repeat(250)}.csv`)).toBeUndefined();
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});

test('a calendar that nests without end is refused at once', () => {
  const nested = `BEGIN:VCALENDAR\n${'BEGIN:VEVENT\n'.repeat(100_000)}`;
  expect(readCalendar(Buffer.from(nested))).toEqual({ wrong: 'line 11: VEVENT stands too deep' });
});
