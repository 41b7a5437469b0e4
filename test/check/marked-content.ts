import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { checkContent } from '../../src/check/check.ts';
import { addMark, originOf } from '../../src/mark/add-mark.ts';
import { marksOf } from '../../src/mark/ledger-marks.ts';
import { writeMark } from '../../src/mark/write-mark.ts';
import { readContent } from '../../src/read/content.ts';
import type { Problem } from '../../src/read/problem.ts';
import type { Day } from '../../src/time/day.ts';
import { type Changes, inContentFolder, NOON } from './content-folder.ts';

/** A file of the press with a piece that changes after the mark; without the second text the file is removed. */
export type Later = readonly [file: string, ...change: (readonly [from: string, to: string])[]];

/** Bytes that stand in for chance, the same in every test. */
export const fixedBytes = (count: number): Uint8Array => new Uint8Array(count).fill(7);

/** Marks the press of a folder as the mark command does; gives how many rows were added. */
export async function markPress(folder: string, day: string): Promise<number> {
  const { projects, site } = await readContent(folder);
  const [press] = projects;
  const marks = press && marksOf(press);
  if (press === undefined || marks === undefined || 'problems' in marks)
    throw new Error('the press can not be marked');
  const origin = originOf(site?.value.address ?? '', press.id);
  const added = addMark(press, marks, { origin, day: day as Day, randomBytes: fixedBytes });
  if (added) await writeMark(join(folder, 'press'), added);
  return added?.rows ?? 0;
}

/** Changes pieces of a file of the press. */
export async function edit(folder: string, [name, ...changes]: Later): Promise<void> {
  const file = join(folder, 'press', name);
  let text = await readFile(file, 'utf8');
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`${name} does not hold "${from}"`);
    text = text.replace(from, () => to);
  }
  await writeFile(file, text);
}

/** Problems of a folder in which everything else is sound. */
export async function problemsIn(folder: string): Promise<Problem[]> {
  return checkContent(await readContent(folder), NOON);
}

/** Marks the sound press with changes, changes more afterwards, and gives what the check says, as a builder sees it. */
export function checkAfterMark(before: Changes, ...later: readonly Later[]): Promise<string> {
  return inContentFolder(before, async (folder) => {
    await markPress(folder, '2025-05-01');
    for (const change of later) await edit(folder, change);
    return (await problemsIn(folder)).map(describe).join('\n');
  });
}

function describe({ file, line, column, level, message, fix }: Problem): string {
  const warning = level === 'warning' ? ' (warning)' : '';
  return `${file}:${line}:${column}${warning}\n  ${message}${fix ? `\n  → ${fix}` : ''}`;
}
