import { join } from 'node:path';
import { writeWhole } from '../write/swap-in.ts';
import type { AddedMark } from './add-mark.ts';

/** The mark itself comes last: whatever breaks off before leaves rows that no mark counts, and the next mark writes over them. */
const ORDER = ['marks-secret.txt', 'marked-rows.jsonl', 'marks.txt'] as const;

/** Writes the files of a mark, each whole. Only their owner may read the secret, also where it came out of a copy that anybody could read. */
export async function writeMark(folder: string, { files }: AddedMark): Promise<void> {
  for (const name of ORDER)
    await writeWhole(
      join(folder, name),
      files[name],
      name === 'marks-secret.txt' ? { mode: 0o600 } : {},
    );
}
