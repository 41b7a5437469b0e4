import { relative } from 'node:path';

/** What the machine refused, and what to do about it. */
const TOLD: Readonly<Record<string, (path: string) => string>> = {
  ENOSPC: (path) => `${path} can't be written: the disk is full. Make room, then try again.`,
  EDQUOT: (path) => `${path} can't be written: your share of the disk is used up. Make room.`,
  EFBIG: (path) => `${path} can't be written: it is larger than files may be here (ulimit -f).`,
  EROFS: (path) => `${path} can't be written: its disk is read-only. Name a folder elsewhere.`,
  EACCES: (path) => `${path} may not be opened or changed by this user. See to its permissions.`,
  EPERM: (path) => `${path} may not be changed by this user. See to its owner and attributes.`,
  EIO: (path) => `${path} can't be read or written: the disk reports an error. Save what is on it.`,
  EBUSY: (path) =>
    `${path} can't change places: it is in use, or a disk is mounted there. Name a folder inside it.`,
  EMFILE: (path) => `${path} can't be opened: too many files are open (ulimit -n).`,
  ENFILE: (path) => `${path} can't be opened: too many files are open on this machine.`,
  ENOENT: (path) => `${path} is not there, or went while it was needed. Try again.`,
  ENOTDIR: (path) => `${path} can't be reached: a part of its path is no folder.`,
  EISDIR: (path) => `${path} is a folder where a file is needed.`,
  EEXIST: (path) => `${path} is there already, and is no folder.`,
  ELOOP: (path) => `${path} is a link that leads in a circle.`,
  EXDEV: (path) => `${path} can't be moved to another disk.`,
  ENOTEMPTY: (path) => `${path} can't be replaced: something was put there meanwhile. Try again.`,
  ENAMETOOLONG: (path) => `${path} has a name that is too long for this disk.`,
};

/** Says in a sentence what the machine refused; undefined where it was not the machine. */
export function tellFailure(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { code = '', path, syscall } = error as NodeJS.ErrnoException;
  const told = TOLD[code]?.(path === undefined ? 'A file' : shownPath(path));
  // Not what a module that is missing is called, or a listener that finds its port taken.
  return syscall === undefined && path === undefined ? undefined : told;
}

function shownPath(path: string): string {
  const way = relative(process.cwd(), path);
  return way === '' || way.startsWith('..') ? path : way;
}
