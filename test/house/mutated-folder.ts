import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Folders whose exactness the whole project stands on: each is mutated by itself. */
export const MUTATED = ['money', 'units', 'measure', 'trust'] as const;

/** Tests that judge a folder: its own, and those laws and outside checks that import it by themselves. */
export function judges(folder: string): string[] {
  return readdirSync('test', { recursive: true, encoding: 'utf8' })
    .map((name) => join('test', name))
    .filter((file) => file.endsWith('.test.ts') && isJudge(file, folder))
    .sort();
}

/** Laws that take many seconds for what other tests find, too: too slow to be asked a thousand times. */
const SLOW = ['mark-laws.test.ts', 'trust-text-laws.test.ts'];

function isJudge(file: string, folder: string): boolean {
  if (file.startsWith(join('test', folder))) return true;
  if (!/^test.(laws|outside)/.test(file) || SLOW.some((name) => file.endsWith(name))) return false;
  const text = readFileSync(file, 'utf8');
  // What the set-up of the whole suite tells (programs there are, the built site) is not there when a few files run by themselves.
  return text.includes(`/src/${folder}/`) && !text.includes("inject('");
}
