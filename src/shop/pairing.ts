import { createHash, randomInt } from 'node:crypto';
import { join } from 'node:path';
import { readJson, saveWhole } from './state-folder.ts';

/** Letters and digits that are not taken for one another when they are read aloud or typed. */
const LETTERS = 'ABCDEFGHJKMNPQRSTUVWXYZ23456789';
const LENGTH = 8;

/** How long a code can be used. */
export const CODE_MINUTES = 10;

/** Wrong codes that are borne before the code is thrown away. */
export const MOST_WRONG = 5;

interface KeptCode {
  readonly hash: string;
  readonly until: string;
  readonly wrong: number;
}

/** How a try to pair ended; `burned` is the last wrong one, after which the code is no good any more. */
export type Tried = 'right' | 'wrong' | 'burned' | 'none';

const fileOf = (state: string) => join(state, 'pairing.json');

/** Makes a new code; the one before is no good any more. It is kept in a file, so that another terminal can make one while the server runs. */
export async function makeCode(state: string, now: Date): Promise<string> {
  const code = Array.from({ length: LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join('');
  const until = new Date(now.getTime() + CODE_MINUTES * 60_000).toISOString();
  await keep(state, { hash: hashOf(code), until, wrong: 0 });
  return code;
}

/** Tries a code. A right one is used up by it. Tries must come one after the other. */
export async function tryCode(state: string, typed: string, now: Date): Promise<Tried> {
  const kept = await readJson<KeptCode | null>(fileOf(state));
  if (!kept || kept.until <= now.toISOString()) return 'none';
  if (hashOf(plain(typed)) === kept.hash) {
    await keep(state, null);
    return 'right';
  }
  const wrong = kept.wrong + 1;
  await keep(state, wrong < MOST_WRONG ? { ...kept, wrong } : null);
  return wrong < MOST_WRONG ? 'wrong' : 'burned';
}

/** A code as it is shown: two groups of four. */
export const showCode = (code: string) => `${code.slice(0, 4)}-${code.slice(4)}`;

const plain = (typed: string) => typed.toUpperCase().replace(/[^A-Z0-9]/g, '');

const hashOf = (code: string) => createHash('sha256').update(`pair ${code}`).digest('hex');

const keep = (state: string, code: KeptCode | null) =>
  saveWhole(fileOf(state), JSON.stringify(code));
