import { readFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import { latestWorked } from '../book/latest-worked.ts';
import type { Book } from '../book/types.ts';
import {
  type CrossCheck,
  type CrossChecks,
  crossCheckKey,
  type DrawJob,
  drawJob,
} from '../measure/cross-check.ts';
import { writeWhole } from '../write/swap-in.ts';
import { workDir } from './folders.ts';

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
 * Draws the latest value of every derived spec of a book that has not been drawn before, spread over the cores, and keeps the results.
 * Gives how many were drawn and in how many seconds.
 */
export async function refreshCrossChecks(book: Book): Promise<{ drawn: number; seconds: number }> {
  const started = performance.now();
  const kept = await keptCrossChecks();
  const jobs = new Map(latestWorked(book).map((worked) => [crossCheckKey(worked), worked]));
  const missing = [...jobs].filter(([key]) => !kept.has(key)).map(([, worked]) => drawJob(worked));
  const fresh = missing.length === 0 ? [] : await drawInWorkers(missing);
  const checks = Object.fromEntries([...kept, ...fresh].filter(([key]) => jobs.has(key)));
  await writeWhole(FILE, JSON.stringify(checks));
  return { drawn: missing.length, seconds: (performance.now() - started) / 1000 };
}

/** Deals the jobs out to one worker a core, in turn, so that each gets its part of the heavy ones. */
async function drawInWorkers(jobs: readonly DrawJob[]): Promise<[string, CrossCheck][]> {
  const count = Math.min(availableParallelism(), jobs.length);
  const shares = Array.from({ length: count }, (_, worker) =>
    jobs.filter((_job, index) => index % count === worker),
  );
  return (await Promise.all(shares.map(drawShare))).flat();
}

function drawShare(jobs: readonly DrawJob[]): Promise<[string, CrossCheck][]> {
  return new Promise((done, reject) => {
    const worker = new Worker(resolve('src/site/cross-check-worker.ts'), { workerData: jobs });
    worker.once('message', done);
    worker.once('error', reject);
  });
}
