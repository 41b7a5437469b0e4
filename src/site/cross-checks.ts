import { readdir, readFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import { latestWorked } from '../book/latest-worked.ts';
import type { Project } from '../book/types.ts';
import {
  type CrossCheck,
  type CrossChecks,
  crossCheckKey,
  type DrawJob,
  drawJob,
} from '../measure/cross-check.ts';
import { writeDerived } from '../write/swap-in.ts';
import { cacheDir } from './folders.ts';

/** One file a project, so that machines that share the folder and work on different projects don't write the same one. */
const FOLDER = join(cacheDir, 'cross-checks');

/** The cross-checks kept from earlier runs; they are named by all that went into them, so an old one is never wrong. */
export async function keptCrossChecks(): Promise<CrossChecks> {
  const files = await readdir(FOLDER).catch(() => []);
  const kept = await Promise.all(files.filter((name) => name.endsWith('.json')).map(readKept));
  return new Map(kept.flatMap((checks) => Object.entries(checks)));
}

async function readKept(name: string): Promise<Record<string, CrossCheck>> {
  try {
    return JSON.parse(await readFile(join(FOLDER, name), 'utf8')) as Record<string, CrossCheck>;
  } catch {
    return {};
  }
}

/**
 * Draws the latest value of every derived spec of these projects that has not been drawn before, spread over the cores, and keeps the results.
 * Gives how many were drawn and in how many seconds.
 */
export async function refreshCrossChecks(
  projects: readonly Project[],
): Promise<{ drawn: number; seconds: number }> {
  const started = performance.now();
  const kept = await keptCrossChecks();
  const wanted = new Map(
    projects.map((project) => [
      project.id,
      new Map(latestWorked(project).map((worked) => [crossCheckKey(worked), worked])),
    ]),
  );
  const missing = new Map(
    [...wanted.values()].flatMap((jobs) => [...jobs]).filter(([key]) => !kept.has(key)),
  );
  const jobs = [...missing.values()].map(drawJob);
  const checks = new Map([...kept, ...(jobs.length === 0 ? [] : await drawInWorkers(jobs))]);
  for (const [id, own] of wanted) {
    const held = [...own.keys()].map((key) => [key, checks.get(key)]);
    await writeDerived(join(FOLDER, `${id}.json`), JSON.stringify(Object.fromEntries(held)));
  }
  return { drawn: jobs.length, seconds: (performance.now() - started) / 1000 };
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
