import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import { latestWorked } from '../book/latest-worked.ts';
import { openBook } from '../book/open.ts';
import { type CrossCheck, type CrossChecks, crossCheckKey } from '../measure/cross-check.ts';
import { contentDir, workDir } from './folders.ts';

const FILE = join(workDir, 'cross-checks.json');

/** The cross-checks kept from earlier runs; they are named by all that went into them, so an old one is never wrong. */
export async function keptCrossChecks(): Promise<CrossChecks> {
  try {
    return new Map(
      Object.entries(JSON.parse(await readFile(FILE, 'utf8')) as Record<string, CrossCheck>),
    );
  } catch {
    return new Map();
  }
}

/**
 * Draws the latest value of every derived spec that has not been drawn before, spread over the cores, and keeps the results.
 * Gives how many were drawn and in how many seconds.
 */
export async function refreshCrossChecks(): Promise<{ drawn: number; seconds: number }> {
  const started = performance.now();
  const [book, kept] = [
    await openBook(contentDir, { now: new Date(), drafts: true }),
    await keptCrossChecks(),
  ];
  const keys = new Set(latestWorked(book).map(crossCheckKey));
  const missing = [...keys].filter((key) => !kept.has(key));
  const fresh = missing.length === 0 ? [] : await drawInWorkers(missing);
  const checks = Object.fromEntries([...kept, ...fresh].filter(([key]) => keys.has(key)));
  await mkdir(workDir, { recursive: true });
  await writeFile(`${FILE}.${process.pid}.new`, JSON.stringify(checks));
  await rename(`${FILE}.${process.pid}.new`, FILE);
  return { drawn: missing.length, seconds: (performance.now() - started) / 1000 };
}

/** Each worker opens the book itself, since formulas can't be sent from one thread to another, and draws its share. */
async function drawInWorkers(keys: readonly string[]): Promise<[string, CrossCheck][]> {
  const count = Math.min(availableParallelism(), keys.length);
  const shares = Array.from({ length: count }, (_, worker) =>
    keys.filter((_key, index) => index % count === worker),
  );
  const results = await Promise.all(shares.map(drawShare));
  return results.flat();
}

function drawShare(keys: readonly string[]): Promise<[string, CrossCheck][]> {
  return new Promise((done, reject) => {
    const worker = new Worker(resolve('src/site/cross-check-worker.ts'), {
      workerData: { contentDir, keys },
    });
    worker.once('message', done);
    worker.once('error', reject);
  });
}
