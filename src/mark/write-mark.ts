import { open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { AddedMark } from './add-mark.ts';

/** The mark itself comes last: whatever breaks off before leaves rows that no mark counts, and the next mark writes over them. */
const ORDER = ['marks-secret.txt', 'marked-rows.jsonl', 'marks.txt'] as const;

/** Writes the files of a mark, each whole beside the old one and then in its place. */
export async function writeMark(folder: string, { files }: AddedMark): Promise<void> {
  for (const name of ORDER) {
    // A name with a dot before it is not read, should it ever stay behind.
    const fresh = join(folder, `.${name}.new`);
    const file = await open(fresh, 'w', name === 'marks-secret.txt' ? 0o600 : 0o644);
    try {
      await file.writeFile(files[name]);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(fresh, join(folder, name));
  }
}
