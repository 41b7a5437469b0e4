import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, readdir, utimes, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withLock } from '../../src/write/lock.ts';
import { startOf } from '../../src/write/process-alive.ts';
import { inContentFolder } from '../check/content-folder.ts';

const NONCE = '11111111-2222-3333-4444-555555555555';

/** Tries for the lock where another one lies already. */
function against(holder: object | string, name = 'lock') {
  return inContentFolder({}, async (content) => {
    const folder = join(content, '.witnessmark');
    await mkdir(folder);
    const text = typeof holder === 'string' ? holder : JSON.stringify(holder);
    await writeFile(join(folder, name), text);
    if (name !== 'lock') await utimes(join(folder, name), 1, 1);
    const result = await withLock(content, 'trying', async () => 'done', 150);
    return { result, left: (await readdir(folder)).sort() };
  });
}

async function own(changes: object = {}) {
  const started = await startOf(process.pid);
  const here = { pid: process.pid, host: hostname(), started };
  return { ...here, since: '2025-06-15T12:00:00Z', what: 'adding rows', nonce: NONCE, ...changes };
}

async function deadPid(): Promise<number> {
  const child = spawn(process.execPath, ['--version'], { stdio: 'ignore' });
  await once(child, 'close');
  return child.pid ?? 0;
}

describe('the lock', () => {
  it('of a process that runs is waited for, and who holds it is said', async () => {
    const { result, left } = await against(await own());
    expect(result).toMatchObject({
      busy: expect.stringMatching(
        `^process ${process.pid} \\(adding rows\\) has been at work here since 2025-06-15T12:00:00Z; wait for it, or end it, then try again \\(.*lock\\)$`,
      ),
    });
    expect(left).toEqual(['.gitignore', 'lock']);
  });

  it('of a process on another machine counts as held', async () => {
    const { result } = await against(await own({ host: 'barn', pid: await deadPid() }));
    expect(result).toMatchObject({ busy: expect.stringContaining(' on barn (adding rows)') });
  });

  it('of a process that is gone, or whose number another one has now, is taken over', async () => {
    for (const changes of [{ pid: await deadPid() }, { started: '1' }]) {
      const { result, left } = await against(await own(changes));
      expect(result).toBe('done');
      expect(left).toEqual(['.gitignore']);
    }
  });

  it('that says nothing is never taken for one that is gone', async () => {
    const { result, left } = await against('');
    expect(result).toMatchObject({ busy: expect.stringContaining("can't be read; remove it") });
    expect(left).toEqual(['.gitignore', 'lock']);
  });

  it('is held by one at a time, and what was left of claims goes with it', async () => {
    const gone = await own({ pid: await deadPid() });
    const names = ['lock.0a1b2c3d', `lock-${NONCE}`, `lock.0a1b2c3d-${NONCE}`];
    for (const name of names) {
      expect(await against(gone, name)).toEqual({ result: 'done', left: ['.gitignore'] });
      expect(await against('{"pid":', name)).toEqual({ result: 'done', left: ['.gitignore'] });
      expect((await against(await own(), name)).left).toEqual(['.gitignore', name]);
    }
    await inContentFolder({}, async (content) => {
      let inside = 0;
      const act = async () => {
        expect(++inside).toBe(1);
        await new Promise((resolve) => setTimeout(resolve, 2));
        inside--;
        return 'done';
      };
      const all = await Promise.all(Array.from({ length: 12 }, () => withLock(content, 'x', act)));
      expect(all).toEqual(all.map(() => 'done'));
    });
  });
});
