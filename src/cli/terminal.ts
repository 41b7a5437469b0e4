import type { Listener } from '../photo/progress.ts';

/** Where a command says how far it is. */
export const terminal: Listener = {
  isTerminal: process.stdout.isTTY === true,
  write: (text) => {
    process.stdout.write(text);
  },
  now: () => performance.now(),
};
