/** What a machine refuses of a file that is there, and what to do about it. */
const WHY: Readonly<Record<string, readonly [message: string, fix: string]>> = {
  EACCES: ["the file can't be read: this user may not", 'see to its permissions'],
  EPERM: ["the file can't be read: this user may not", 'see to its owner and attributes'],
  EIO: ["the file can't be read: the disk reports an error", 'bring it back from a copy'],
  EISDIR: ['there is a folder where a file is read', 'give it another name'],
  ELOOP: ['the file is a link that leads in a circle', 'put the file itself there'],
};

/** Says why a file can't be read; undefined where that has another reason. */
export function refusalOf({ code = '' }: NodeJS.ErrnoException) {
  return WHY[code];
}
