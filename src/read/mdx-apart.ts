import { spawnSync } from 'node:child_process';

/** Signs and words that can make a program nest. The parser is native and ends the whole process where one nests some 6,000 deep. */
const NESTS =
  /[^\w\s]|\b(?:async|await|case|class|delete|do|else|extends|for|function|if|in|new|of|return|throw|typeof|void|while|with|yield)\b/g;
const MANY = 2_500;

/** Whether a text has more of a program's signs than can be parsed without care; only a very long entry has by nature. */
export function hasManySigns(text: string): boolean {
  if (text.length < MANY) return false;
  let count = 0;
  for (const _ of text.matchAll(NESTS)) if (++count > MANY) return true;
  return false;
}

const PARSE = `import('satteri').then(({ mdxToMdast }) => {
  try { mdxToMdast(require('node:fs').readFileSync(0, 'utf8'), {}); } catch {}
})`;

/** Texts that can be parsed; one is read again and again while its entry is looked at. */
const survived = new Set<string>();

/** Parses a text in a process of its own first. @throws when that process does not survive it. */
export function parseElsewhere(text: string): void {
  if (survived.has(text)) return;
  const { signal, status } = spawnSync(process.execPath, ['-e', PARSE], {
    input: text,
    stdio: ['pipe', 'ignore', 'ignore'],
    timeout: 20_000,
  });
  // Windows knows no signals; what ends a process there is a large status.
  if (signal !== null || (status ?? 0) > 1)
    throw new RangeError('the parser does not survive this text');
  survived.add(text);
}
