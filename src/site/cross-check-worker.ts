import { parentPort, workerData } from 'node:worker_threads';
import { latestWorked } from '../book/latest-worked.ts';
import { openBook } from '../book/open.ts';
import { type CrossCheck, crossCheck, crossCheckKey } from '../measure/cross-check.ts';

const { contentDir, keys } = workerData as { contentDir: string; keys: readonly string[] };
const wanted = new Set(keys);
const book = await openBook(contentDir, { now: new Date(), drafts: true });
const results: [string, CrossCheck][] = [];
for (const value of latestWorked(book)) {
  const key = crossCheckKey(value);
  if (wanted.delete(key)) results.push([key, crossCheck(value)]);
}
parentPort?.postMessage(results);
