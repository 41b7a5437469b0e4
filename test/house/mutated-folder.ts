import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';

/** Folders whose exactness the whole project stands on: each is mutated by itself. */
export const MUTATED = ['money', 'units', 'measure', 'trust'] as const;

// The page's own script runs in a browser, where no mistake can be switched on.
const NOT_HERE = ['marks-page.js'];

/** The files of a folder that mistakes are planted in, as paths in it. */
export function mutatedFiles(folder: string): string[] {
  return readdirSync(join('src', folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|js)$/.test(name) && !NOT_HERE.includes(basename(name)))
    .sort();
}

/**
 * Tests that judge a folder: its own, and those laws and outside checks that import it by themselves. The slow ones are asked by
 * themselves, about what the others let pass.
 */
export function judges(folder: string, slow = false): string[] {
  return readdirSync('test', { recursive: true, encoding: 'utf8' })
    .map((name) => join('test', name))
    .filter((file) => file.endsWith('.test.ts') && isSlow(file) === slow && isJudge(file, folder))
    .sort();
}

/** Tests that take seconds each time: too slow to be asked a thousand times. */
const SLOW = [
  ...['test/laws/mark-laws', 'test/laws/trust-text-laws', 'test/laws/figure-laws'],
  ...['test/laws/propagation-laws', 'test/outside/monte-carlo', 'test/outside/forecast'],
  ...['test/outside/uncertainties', 'test/measure/kept-checks', 'test/laws/draw-errors'],
];

const isSlow = (file: string) => SLOW.some((slow) => file.startsWith(slow));

function isJudge(file: string, folder: string): boolean {
  if (file.startsWith(join('test', folder))) return true;
  if (!/^test.(laws|outside)/.test(file)) return false;
  const text = readFileSync(file, 'utf8');
  // What the set-up of the whole suite tells (programs there are, the built site) is not there when a few files run by themselves.
  return text.includes(`/src/${folder}/`) && !text.includes("inject('");
}
