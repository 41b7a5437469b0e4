import { type Problem, problemAt } from './problem.ts';

/** What a machine refuses of a file that is there, and what to do about it. */
const WHY: Readonly<Record<string, readonly [message: string, fix: string]>> = {
  EACCES: ["the file can't be read: this user may not", 'see to its permissions'],
  EPERM: ["the file can't be read: this user may not", 'see to its owner and attributes'],
  EIO: ["the file can't be read: the disk reports an error", 'bring it back from a copy'],
  EISDIR: ['there is a folder where a file is read', 'give it another name'],
  ELOOP: ['the file is a link that leads in a circle', 'put the file itself there'],
};

/** Makes a problem of what the machine refuses to read, so that it is told with all else that is wrong; any other error is thrown on. */
export function unread(file: string): (error: NodeJS.ErrnoException) => Problem {
  return (error) => {
    const why = WHY[error.code ?? ''];
    if (why === undefined) throw error;
    return problemAt({ file, line: 1, column: 1 }, 'file/unreadable', ...why);
  };
}
