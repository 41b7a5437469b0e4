import { isAbsolute, relative, sep } from 'node:path';

/** Whether a path lies in a folder, or is it. From another drive there is no way into it. */
export function liesIn(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
