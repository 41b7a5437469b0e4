import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { checkContent } from '../../src/check/check.ts';
import { readContent } from '../../src/read/content.ts';
import type { Problem } from '../../src/read/problem.ts';
import { type Files, soundFiles } from './sound-files.ts';

/** What differs from the sound project: a whole file, a piece of one and what stands there instead, or no file at all. */
export type Changes = Readonly<
  Record<string, string | Uint8Array | readonly [piece: string, instead: string] | undefined>
>;

/** The day on which the tests look at the content. */
export const NOON = new Date('2025-06-15T12:00:00Z');

/** Writes the sound project with changes to a new folder, lets `use` work there, and removes the folder again. */
export async function inContentFolder<Result>(
  changes: Changes,
  use: (folder: string) => Promise<Result>,
): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-content-'));
  try {
    for (const [file, content] of Object.entries(changed(changes))) {
      await mkdir(dirname(join(folder, file)), { recursive: true });
      await writeFile(join(folder, file), content);
    }
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** All problems of the sound project with changes. */
export function problemsOf(changes: Changes, now: Date = NOON): Promise<Problem[]> {
  return inContentFolder(changes, async (folder) => checkContent(await readContent(folder), now));
}

/** All problems as a builder sees them: place, what is wrong, what to type. */
export async function check(changes: Changes): Promise<string> {
  const problems = await problemsOf(changes);
  return problems
    .map(({ file, line, column, level, message, fix }) =>
      [
        `${file}:${line}:${column}${level === 'warning' ? ' (warning)' : ''}`,
        `  ${message}`,
        ...(fix === undefined ? [] : [`  → ${fix}`]),
      ].join('\n'),
    )
    .join('\n');
}

function changed(changes: Changes): Files {
  const files = new Map(Object.entries(soundFiles));
  for (const [file, change] of Object.entries(changes)) {
    if (change === undefined) files.delete(file);
    else if (typeof change === 'string' || change instanceof Uint8Array) files.set(file, change);
    else files.set(file, withPiece(String(files.get(file)), change));
  }
  return Object.fromEntries(files);
}

function withPiece(text: string, [piece, instead]: readonly [string, string]): string {
  if (!text.includes(piece)) throw new Error(`the sound file does not hold "${piece}"`);
  return text.replace(piece, () => instead);
}
