import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Fresh, swapIn, writeBeside } from '../write/swap-in.ts';
import type { AddedMark, MarkFile } from './add-mark.ts';

/** The mark itself comes last: whatever breaks off before leaves rows that no mark counts, and the next mark writes over them. */
const ORDER: readonly MarkFile[] = ['marks-secret.txt', 'marked-rows.jsonl', 'marks.txt'];

/** Only their owner may read the secret, also where it came out of a copy that anybody could read. */
const MODES: Readonly<Record<string, number>> = { 'marks-secret.txt': 0o600 };

/** Writes the files of a mark: all are whole on the disk before the first takes its place. */
export async function writeMark(folder: string, { files }: AddedMark): Promise<void> {
  const fresh: Fresh[] = [];
  try {
    for (const name of ORDER) {
      const text = files[name];
      if (text === undefined) continue;
      fresh.push(await writeBeside(join(folder, name), text, { mode: MODES[name] }));
    }
  } catch (error) {
    for (const { path } of fresh) await rm(path, { force: true });
    throw error;
  }
  for (const one of fresh) await swapIn(one);
}
