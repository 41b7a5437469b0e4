import { constants } from 'node:os';
import { relative } from 'node:path';
import { liesIn } from '../write/lies-in.ts';

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
  ELOOP: (path) =>
    `${path} is a link that leads in a circle, or stands where a file is needed. Remove it.`,
  EXDEV: (path) => `${path} can't be moved to another disk.`,
  ENOTEMPTY: (path) => `${path} can't be replaced: something was put there meanwhile. Try again.`,
  ENAMETOOLONG: (path) => `${path} has a name that is too long for this disk.`,
};

const BEGUN = 'What was asked for is written down, and the next command ends it: do not ask again.';

/** Says in a sentence what the machine refused; undefined where it was not the machine. */
export function tellFailure(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { code, path, dest, syscall, begun } = refusalIn(error);
  const place = syscall === 'copyfile' ? dest : path;
  const told = TOLD[code ?? '']?.(place === undefined ? 'A file' : shownPath(place));
  if (told === undefined) return tellFailure(error.cause);
  return begun ? `${told}\n${BEGUN}` : told;
}

interface Refusal {
  readonly code?: string | undefined;
  readonly path?: string | undefined;
  /** What was written where it was copied. */
  readonly dest?: string | undefined;
  readonly syscall?: string | undefined;
  /** Whether the change was written down already. */
  readonly begun?: boolean;
}

/** The bundler, which is no JavaScript, has number and file in its words alone. */
function refusalIn(error: Error): Refusal {
  const number = /\(os error (\d+)\)/.exec(error.message)?.[1];
  if (number === undefined) return error as Refusal;
  const [code] = Object.entries(constants.errno).find(([, of]) => of === Number(number)) ?? [];
  return { code, path: /^Failed to .*? (?:in|at|for) (.+)$/m.exec(error.message)?.[1] };
}

function shownPath(path: string): string {
  const way = relative(process.cwd(), path);
  return way !== '' && liesIn(process.cwd(), path) ? way : path;
}
