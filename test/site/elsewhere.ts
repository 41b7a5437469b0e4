import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import os from 'node:os';
import { setTimeout as wait } from 'node:timers/promises';
import { isMainThread } from 'node:worker_threads';

// Loaded into a command before anything else, so that it runs on another machine and day, as far as a program can tell.
// `ELSEWHERE` holds how far its clock is off, in days, and how many cores it has.

const [days = 0, cores = 1] = (process.env.ELSEWHERE ?? '').split(' ').map(Number);
const RealDate = Date;
const now = () => RealDate.now() + days * 86_400_000;

globalThis.Date = new Proxy(RealDate, {
  construct: (date, args, target) =>
    Reflect.construct(date, args.length === 0 ? [now()] : args, target),
  apply: () => new RealDate(now()).toString(),
  get: (date, name) => (name === 'now' ? now : Reflect.get(date, name)),
});

let seed = cores;
Math.random = () => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed / 2_147_483_647;
};

/** With several cores folders are listed from the end: no order of a disk can be relied on. */
const turned = <Items>(items: Items): Items =>
  Array.isArray(items) && cores > 1 ? (items.toReversed() as Items) : items;
const { readdir, readdirSync } = fs;
const { readdir: readdirLater, readFile } = fs.promises;
type Answer = (error: unknown, items?: unknown) => void;
Object.assign(fs, {
  readdirSync: (...args: Parameters<typeof readdirSync>) => turned(readdirSync(...args)),
  readdir: (...args: unknown[]) => {
    const answer = args.pop() as Answer;
    Reflect.apply(readdir, fs, [
      ...args,
      (error: unknown, items: unknown) => answer(error, turned(items)),
    ]);
  },
});
Object.assign(fs.promises, {
  readdir: async (...args: Parameters<typeof readdirLater>) => turned(await readdirLater(...args)),
  // What is read at once comes in no order either.
  readFile: async (...args: Parameters<typeof readFile>) => {
    await wait(Math.random() * cores);
    return readFile(...args);
  },
});

Object.assign(os, {
  availableParallelism: () => cores,
  cpus: () => Array.from({ length: cores }, () => ({ model: 'other', speed: 1, times: {} })),
  hostname: () => `bench-${cores}`,
  userInfo: () => ({ username: `user-${cores}`, uid: 4_000 + cores, gid: 4_000, shell: null }),
});
if (isMainThread) process.umask(cores > 1 ? 0o077 : 0o022);
syncBuiltinESMExports();
