import { AsyncLocalStorage } from 'node:async_hooks';
import { randomUUID } from 'node:crypto';
import { link, mkdir, open, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { isAlive, startOf } from './process-alive.ts';
import { named } from './swap-in.ts';

/** Folder of a content folder where what writing needs is kept; no reader looks into folders with a dot. */
export const WRITE_FOLDER = '.witnessmark';

/** Who holds a lock. */
interface Holder {
  readonly pid: number;
  readonly host: string;
  /** When the process started, since numbers of processes come again. */
  readonly started: string;
  readonly since: string;
  readonly what: string;
  /** Names this one holding of the lock. */
  readonly nonce: string;
}

/** Said where another process has been writing for longer than one waits. */
export interface Busy {
  readonly busy: string;
}

/** The locks that whatever runs has taken already, so that what is done under a lock may ask for it again. */
const held = new AsyncLocalStorage<readonly string[]>();

/** Does something as the only one who writes in a content folder; waits for whoever does, up to a limit. */
export async function withLock<Result>(
  contentDir: string,
  what: string,
  act: () => Promise<Result>,
  waitMs = 15_000,
): Promise<Result | Busy> {
  const folder = join(contentDir, WRITE_FOLDER);
  await mkdir(folder, { recursive: true });
  const ignore = join(folder, '.gitignore');
  await writeFile(ignore, '*\n', { flag: 'wx' }).catch(ignoreExisting).catch(named(ignore));
  const sweptFirst = async () => {
    await sweepFiles(folder);
    return act();
  };
  const path = join(folder, 'lock');
  return withLockFile(path, what, holds(path) ? act : sweptFirst, waitMs);
}

/** Does something as the only one who holds a lock file; its folder must be there. */
export async function withLockFile<Result>(
  file: string,
  what: string,
  act: () => Promise<Result>,
  waitMs: number,
): Promise<Result | Busy> {
  const path = resolve(file);
  if (holds(path)) return act();
  const taken = await acquire(path, what, performance.now() + waitMs);
  if ('busy' in taken) return taken;
  try {
    await sweep(path);
    return await held.run([...(held.getStore() ?? []), path], act);
  } finally {
    await rm(path, { force: true });
  }
}

function holds(path: string): boolean {
  return held.getStore()?.includes(resolve(path)) ?? false;
}

/** Removes pictures and projects that were being written when their process was ended: whoever writes such holds the lock. */
async function sweepFiles(folder: string): Promise<void> {
  for (const name of await readdir(folder))
    if (/^(file|project)-[0-9a-f-]{36}$/.test(name))
      await rm(join(folder, name), { recursive: true, force: true });
}

/** Removes what processes that were ended in the middle of claiming have left; only whoever holds the lock may. */
async function sweep(path: string): Promise<void> {
  const [folder, lock] = [dirname(path), basename(path)];
  for (const name of await readdir(folder)) {
    if (!name.startsWith(`${lock}.`) && !name.startsWith(`${lock}-`)) continue;
    const left = join(folder, name);
    const holder = await holderOf(left);
    const gone = holder ? !(await isAlive(holder, hostname())) : await isOld(left);
    if (gone) await rm(left, { force: true });
  }
}

/** One that can't be read may be about to be written, but not for long. */
async function isOld(path: string): Promise<boolean> {
  const found = await stat(path).catch(() => undefined);
  return found !== undefined && Date.now() - found.mtimeMs > 60_000;
}

async function acquire(path: string, what: string, until: number): Promise<Holder | Busy> {
  const mine: Holder = {
    pid: process.pid,
    host: hostname(),
    started: await startOf(process.pid),
    since: new Date().toISOString(),
    what,
    nonce: randomUUID(),
  };
  for (;;) {
    if (await claim(path, mine)) return mine;
    const holder = await holderOf(path);
    if (holder === undefined && performance.now() > until)
      return { busy: `${path} can't be read; remove it` };
    if (holder === undefined) continue;
    if (!(await isAlive(holder, hostname()))) await clearAway(path, holder, what, until);
    else if (performance.now() > until) return { busy: describe(path, holder) };
    else await wait(10 + Math.random() * 30);
  }
}

/** A lock appears with all that it says or not at all: a link to a file that is already whole. */
async function claim(path: string, mine: Holder): Promise<boolean> {
  const whole = `${path}-${mine.nonce}`;
  const text = `${JSON.stringify(mine)}\n`;
  try {
    await writeFile(whole, text, { flush: true }).catch(named(path));
    await link(whole, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'].includes(code ?? '')) throw error;
    return createWhole(path, text);
  } finally {
    await rm(whole, { force: true });
  }
}

/** For file systems without links. */
async function createWhole(path: string, text: string): Promise<boolean> {
  try {
    await (await open(path, 'wx')).close();
  } catch (error) {
    ignoreExisting(error as NodeJS.ErrnoException);
    return false;
  }
  try {
    await writeFile(path, text);
    return true;
  } catch (error) {
    await rm(path);
    throw error;
  }
}

/**
 * Removes the lock of a process that is gone. The right to do so is a lock as well, named by that one holding: so nobody removes what
 * a third has claimed in the meantime. Whoever has the right may be gone as well; the right to remove that has a name no longer than it.
 */
async function clearAway(path: string, gone: Holder, what: string, until: number): Promise<void> {
  const right = `${path.replace(/\.[0-9a-f]{8}$/, '')}.${gone.nonce.slice(0, 8)}`;
  if ('busy' in (await acquire(right, what, until))) return;
  const now = await holderOf(path);
  if (now?.nonce === gone.nonce) await rm(path, { force: true });
  await rm(right, { force: true });
}

async function holderOf(path: string): Promise<Holder | undefined> {
  try {
    return JSON.parse(await readFile(path, 'utf8')) as Holder;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT' || error instanceof SyntaxError) {
      await wait(5);
      return undefined;
    }
    throw error;
  }
}

function describe(path: string, { pid, host, since, what }: Holder): string {
  const where = host === hostname() ? '' : ` on ${host}`;
  return `process ${pid}${where} (${what}) has been at work here since ${since}; wait for it, or end it, then try again (${path})`;
}

function ignoreExisting(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EEXIST') throw error;
}
