import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

/**
 * What keeps two folders from being the same, byte for byte: a line for every file that differs or that only one of them has, by path.
 * Two folders without a file are never the same, so that a build that made nothing can't pass for a good one.
 */
export async function differences(first: string, second: string): Promise<string[]> {
  const [ones, others] = await Promise.all([pathsIn(first), pathsIn(second)]);
  if (ones.size + others.size === 0) return ['neither folder has a file'];
  const paths = [...new Set([...ones, ...others])].sort();
  const lines: string[] = [];
  for (const path of paths) {
    if (!others.has(path)) lines.push(`${path} is only in the first`);
    else if (!ones.has(path)) lines.push(`${path} is only in the second`);
    else lines.push(...(await differenceOf(path, join(first, path), join(second, path))));
  }
  return lines;
}

async function pathsIn(folder: string): Promise<ReadonlySet<string>> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true });
  return new Set(
    items
      .filter((item) => !item.isDirectory())
      .map((item) => relative(folder, join(item.parentPath, item.name)).replaceAll(sep, '/')),
  );
}

async function differenceOf(path: string, first: string, second: string): Promise<string[]> {
  const [one, other] = await Promise.all([readFile(first), readFile(second)]);
  if (one.equals(other)) return [];
  const at = one.findIndex((byte, index) => byte !== other[index]);
  return [`${path} differs from byte ${at === -1 ? one.length : at} on`];
}
