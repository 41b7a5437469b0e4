import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect } from 'vitest';
import { checkContent } from '../../src/check/check.ts';
import { type ReadProject, readContent } from '../../src/read/content.ts';
import { type NewRow, type WriteResult, writeRows } from '../../src/write/write-rows.ts';
import { NOON } from '../check/content-folder.ts';

/** Hours of the press. */
export const hoursRow = (what: string, fields: Record<string, string> = {}): NewRow => ({
  kind: 'hours',
  fields: { date: '2025-05-01', hours: '1:30', phase: 'rebuild', work: 'fit', what, ...fields },
});

/** A cost of the press. */
export const costRow = (what: string, fields: Record<string, string> = {}): NewRow => ({
  kind: 'costs',
  fields: {
    date: '2025-05-01',
    amount: '12.50',
    category: 'tool',
    phase: 'rebuild',
    what,
    ...fields,
  },
});

/** A part of the press. */
export const partRow = (name: string, fields: Record<string, string> = {}): NewRow => ({
  kind: 'parts',
  fields: { name, system: 'ram', source: 'press', ...fields },
});

/** Adds rows to the press on the day of the tests. */
export function addRows(content: string, ...rows: NewRow[]): Promise<WriteResult> {
  return writeRows(content, 'press', rows, { now: NOON });
}

/** The rows that were written, where nothing was refused. */
export async function added(result: Promise<WriteResult>) {
  const done = await result;
  if ('problems' in done) throw new Error(done.problems.map(({ message }) => message).join('\n'));
  return done.written;
}

/** What was refused and where, where something was. */
export async function refused(result: Promise<{ problems: readonly unknown[] } | object>) {
  const done = await result;
  expect(done).toHaveProperty('problems');
  const { problems } = done as Extract<WriteResult, { problems: unknown }>;
  return problems.map(({ file, line, column, message }) => `${file}:${line}:${column} ${message}`);
}

/** The press as read. */
export async function pressOf(content: string): Promise<ReadProject> {
  const [press] = (await readContent(content)).projects;
  if (press === undefined) throw new Error('the press is gone');
  return press;
}

/** Mistakes in the content folder. */
export async function mistakesIn(content: string): Promise<string[]> {
  const problems = checkContent(await readContent(content), NOON);
  return problems
    .filter(({ level }) => level === 'error')
    .map(({ file, message }) => `${file}: ${message}`);
}

/** The bytes of every file below the press, hidden ones too. */
export async function bytesBelow(content: string): Promise<Record<string, string>> {
  const items = await readdir(join(content, 'press'), { recursive: true, withFileTypes: true });
  const files = items
    .filter((item) => item.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  const read = async (file: string) =>
    [file.slice(content.length + 1), await readFile(file, 'latin1')] as const;
  return Object.fromEntries(await Promise.all(files.sort().map(read)));
}
