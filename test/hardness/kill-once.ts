import { existsSync, watch } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect } from 'vitest';
import { filesOf } from '../cli/run-command.ts';
import { contentOf, copyHome, derivedOf, type Files, type Job, type Scene } from './jobs.ts';
import { type Running, runProgram } from './run-program.ts';

/** When a program is killed: at a step of writing, at a moment, or so many changes of its folders after the first. */
export type When =
  | { readonly step: number }
  | { readonly ms: number }
  | { readonly changes: number; readonly later: number };

/** How a killed run ended, and what it left. */
export interface Killed {
  readonly died: boolean;
  readonly left: readonly string[];
}

/** Kills a job in a copy of its scene, looks at what is left, and lets the next run make it good. */
export async function killOnce(job: Job, scene: Scene, when: When): Promise<Killed> {
  const home = `${scene.home}-killed`;
  await copyHome(scene.home, home);
  const siteBefore = await filesOf(join(home, 'dist'));
  const running = runProgram(job.program, home, 'step' in when ? { killAt: when.step } : {});
  const watching = killWhen(running, home, when);
  const ended = await running.ended;
  watching.stop();
  const died = ended.signal === 'SIGKILL';
  const said = `${JSON.stringify(when)}\n${ended.out}${ended.err}`;
  if (!died) expect(ended.status, said).toBe(0);

  const found = await contentOf(home, 'settled');
  const left = await leftIn(home, scene);
  areOldOrNew(found, scene.states, said);
  if (job.derives && job.before.length > 0) await isWholeSite(home, siteBefore, scene, said);

  const next = await runProgram(job.program, home).ended;
  expect(next.status, `${said}\nnext:\n${next.out}${next.err}`).toBe(0);
  const wasDone = job.done !== undefined && ended.out.includes(job.done);
  const after = await contentOf(home);
  // Done twice, where the killed run had got so far that it, or whoever came next, could end it.
  const [, once, twice] = scene.states;
  expect(wasDone ? [twice] : [once, twice], said).toContainEqual(after);
  if (job.derives) expect(await derivedOf(home), said).toEqual(scene.derived);
  expect(await leftIn(home, scene), said).toEqual([]);
  return { died, left };
}

function killWhen(running: Running, home: string, when: When): { stop: () => void } {
  if ('step' in when) return { stop: () => {} };
  if ('ms' in when) {
    const timer = setTimeout(running.kill, when.ms);
    return { stop: () => clearTimeout(timer) };
  }
  let count = 0;
  const watchers = ['content', 'work', 'dist', '.']
    .map((name) => join(home, name))
    .filter((folder) => existsSync(folder))
    .map((folder) =>
      watch(folder, { recursive: !folder.endsWith('.') }, () => {
        if (++count === when.changes) wait(when.later).then(running.kill);
      }),
    );
  return { stop: () => watchers.forEach((watcher) => void watcher.close()) };
}

/** Every file is the old one or a new one, whole; nothing is missing, and nothing is there besides but what is beside its place. */
function areOldOrNew(found: Files, states: readonly Files[], said: string): void {
  for (const [path, hash] of Object.entries(found)) {
    if (isBeside(path)) continue;
    expect(
      states.map((files) => files[path]),
      `${path}\n${said}`,
    ).toContain(hash);
  }
  const kept = Object.keys(states[0] ?? {}).filter((path) => states.every((files) => files[path]));
  expect(Object.keys(found), said).toEqual(expect.arrayContaining(kept));
}

const isBeside = (path: string) => /(^|\/)\.[^/]+\.new$/.test(path);

/** The site of before or the new one; between two renames the old one lies in the work folder. */
async function isWholeSite(home: string, before: Files, scene: Scene, said: string): Promise<void> {
  const after = Object.fromEntries(
    Object.entries(scene.derived)
      .filter(([path]) => path.startsWith('dist/'))
      .map(([path, hash]) => [path.slice('dist/'.length), hash]),
  );
  const site = existsSync(join(home, 'dist')) ? 'dist' : 'work/dist-old';
  expect([before, after], said).toContainEqual(await filesOf(join(home, site)));
}

/** Names of what should not stay: locks, files beside their places, what was begun. */
async function leftIn(home: string, { states, derived }: Scene): Promise<string[]> {
  const known = new Set([
    ...states.flatMap((files) => Object.keys(files)).map((path) => `content/${path}`),
    ...Object.keys(derived),
    ...['.gitignore', 'additions.jsonl'].map((name) => `content/.witnessmark/${name}`),
  ]);
  const names: string[] = [];
  for (const folder of ['content', 'work', 'dist']) {
    const items = await readdir(join(home, folder), { recursive: true, withFileTypes: true }).catch(
      () => [],
    );
    for (const item of items) {
      const path = join(item.parentPath, item.name).slice(home.length + 1);
      if (item.isFile() && !known.has(path) && !/^work\/(astro|vite|cache\/programs)\//.test(path))
        names.push(path);
    }
  }
  const beside = (await readdir(home)).filter((name) => /\.tmp\.|\.new$/.test(name));
  return [...names, ...beside].sort();
}
