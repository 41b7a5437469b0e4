// One contender of the photo bench in a process of its own, so that its memory can be measured; prints what it took.
import { join } from 'node:path';
import { openBook } from '../book/open.ts';
import { derivePhotos } from '../photo/derive.ts';

const [who = '', folder = ''] = process.argv.slice(2);
const started = performance.now();
if (who === 'ours') {
  const book = await openBook(join(folder, 'content'), { now: new Date() });
  const problems = await derivePhotos(book, {
    contentDir: join(folder, 'content'),
    workDir: join(folder, 'work'),
    cacheDir: join(folder, 'cache'),
  });
  if (book.problems.length + problems.length > 0)
    throw new Error(JSON.stringify([...book.problems, ...problems].slice(0, 3)));
} else {
  const { build } = await import('astro');
  await build({ root: folder, logLevel: 'error' });
}
const seconds = (performance.now() - started) / 1000;
const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
const cpu = (userCPUTime + systemCPUTime) / 1e6;
console.log(JSON.stringify({ seconds, cpu, megabytes: maxRSS / 1024 }));
