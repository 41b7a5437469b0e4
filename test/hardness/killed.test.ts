import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { type Job, jobs, type Scene, sceneOf } from './jobs.ts';
import { killOnce, type When } from './kill-once.ts';

// WITNESSMARK_KILLS says how often each is killed, WITNESSMARK_KILLED which; without them a few are, a step of writing each.
const KILLS = Number(process.env.WITNESSMARK_KILLS ?? 1);
const FEW = ['add', 'mark', 'table', 'fix'];
const NAMES = process.env.WITNESSMARK_KILLED?.split(',') ?? (KILLS > 1 ? Object.keys(jobs) : FEW);

it('leaves whole files wherever it is killed, and the next run makes it good', {
  timeout: KILLS * NAMES.length * 120_000,
}, async () => {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-kills-'));
  vi.stubEnv('NODE_COMPILE_CACHE', join(home, 'compiled'));
  try {
    for (const name of NAMES) await killOften(name, jobs[name], join(home, name));
  } finally {
    vi.unstubAllEnvs();
    await rm(home, { recursive: true, force: true });
  }
});

async function killOften(name: string, job: Job | undefined, home: string): Promise<void> {
  if (job === undefined) throw new Error(`there is no job "${name}"`);
  const scene = await sceneOf(job, home);
  const counts: Record<string, number> = { kills: 0, ended: 0, leftThings: 0 };
  for (let index = 0; index < KILLS; index++) {
    const { died, left } = await killOnce(job, scene, momentOf(index, job, scene));
    counts[died ? 'kills' : 'ended'] = (counts[died ? 'kills' : 'ended'] ?? 0) + 1;
    if (left.length > 0) counts['leftThings'] = (counts['leftThings'] ?? 0) + 1;
    for (const kind of new Set(left.map(kindOf))) counts[kind] = (counts[kind] ?? 0) + 1;
  }
  process.stderr.write(`${name}: ${JSON.stringify(counts)}\n`);
  expect((counts['kills'] ?? 0) + (counts['ended'] ?? 0)).toBe(KILLS);
}

/** Half of them at a step of writing, the others while files change or at any moment. */
function momentOf(index: number, { slow = false }: Job, { ms, steps }: Scene): When {
  const upTo = (most: number) => 1 + Math.floor(Math.random() * most);
  if (!slow && index % 2 === 0) return { step: upTo(steps) };
  if (index % 4 === 1) return { changes: upTo(slow ? 200 : 30), later: Math.random() * 4 };
  return { ms: Math.random() * ms };
}

/** What a thing that was left is, without the names of pictures and processes. */
function kindOf(path: string): string {
  return path
    .replace(/[0-9a-f]{8,}[-0-9a-f]*/g, 'HASH')
    .replace(/(dist-(?:new|old)[^/]*)\/.*/, '$1')
    .replace(/\d{3,}/g, 'N');
}
