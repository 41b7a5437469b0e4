import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** What a content folder's files looked like at a moment, by their paths. */
export type ContentState = ReadonlyMap<string, string>;

/** Notes names, sizes and times of all files of a content folder; the folders that commands keep in it are left out. */
export async function contentState(contentDir: string, inside = ''): Promise<ContentState> {
  const items = await readdir(join(contentDir, inside), { withFileTypes: true });
  const states = items
    .filter(({ name }) => !name.startsWith('.'))
    .map(async (item): Promise<readonly (readonly [string, string])[]> => {
      const path = inside === '' ? item.name : `${inside}/${item.name}`;
      if (item.isDirectory()) return [...(await contentState(contentDir, path))];
      return [[path, await stampOf(join(contentDir, path))]];
    });
  return new Map((await Promise.all(states)).flat());
}

/** Files that are there no more, or anew, or changed. */
export function changedSince(before: ContentState, now: ContentState): readonly string[] {
  const paths = [...new Set([...before.keys(), ...now.keys()])];
  return paths.filter((path) => before.get(path) !== now.get(path)).sort();
}

async function stampOf(path: string): Promise<string> {
  try {
    const { size, mtimeMs, ctimeMs, ino } = await stat(path);
    return `${size}-${mtimeMs}-${ctimeMs}-${ino}`;
  } catch (error) {
    // A link to nowhere, or a file that went in between.
    return (error as NodeJS.ErrnoException).code ?? 'none';
  }
}
