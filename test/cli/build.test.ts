import { existsSync } from 'node:fs';
import { cp, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { soundFiles } from '../check/sound-files.ts';
import { type Dirs, filesOf, inWorkshop, runCommand, startCommand } from './run-command.ts';

const TITLE = ['A shed and a press', 'A barn and a press'] as const;
const NEW_SITE_YAML = String(soundFiles['site.yaml']).replace(...TITLE);

type Site = Awaited<ReturnType<typeof filesOf>>;

let kept = '';
let before: Site = {};
let after: Site = {};

beforeAll(async () => {
  kept = await mkdtemp(join(tmpdir(), 'witnessmark-kept-'));
  await inWorkshop({}, async (dirs) => {
    await runCommand(['build'], { ...dirs, dist: kept });
    before = await filesOf(kept);
  });
  await inWorkshop({ 'site.yaml': NEW_SITE_YAML }, async (dirs) => {
    await runCommand(['build'], dirs);
    after = await filesOf(dirs.dist);
  });
});

afterAll(() => rm(kept, { recursive: true, force: true }));

const freshFolder = async ({ work }: Dirs) => {
  const names = await readdir(work).catch(() => []);
  const fresh = names.find((name) => name.startsWith('dist-new-'));
  return fresh && join(work, fresh);
};

const leftBehind = async ({ work }: Dirs) =>
  (await readdir(work)).filter((name) => name.startsWith('dist-'));

/** Moments of a build, told by what is on the disk. */
const moments: Readonly<Record<string, (dirs: Dirs) => Promise<boolean>>> = {
  'when it has just begun': async () => true,
  'when it prepares': async ({ work }) => existsSync(join(work, 'photos.json')),
  'when its new folder is there': async (dirs) => (await freshFolder(dirs)) !== undefined,
  'when its first page is there': async (dirs) => {
    const fresh = await freshFolder(dirs);
    return fresh !== undefined && existsSync(join(fresh, 'index.html'));
  },
  'when it swaps the folders': async ({ dist, work }) =>
    existsSync(join(work, 'dist-old')) || !existsSync(dist),
};

describe('a good build', () => {
  it('replaces the site whole and leaves nothing half-made behind', () =>
    inWorkshop({ 'site.yaml': NEW_SITE_YAML }, async (dirs) => {
      await cp(kept, dirs.dist, { recursive: true });
      await writeFile(join(dirs.dist, 'left-over.bin'), Uint8Array.of(0, 255, 10, 13));
      const ran = await runCommand(['build'], dirs);
      expect(ran).toMatchObject({ status: 0, err: '' });
      expect(ran.out).toMatch(/^Built \S+dist: 1 project, 1 entry, in \d+\.\d s\.\n$/);
      expect(await filesOf(dirs.dist)).toEqual(after);
      expect(await leftBehind(dirs)).toEqual([]);
    }));

  it('makes the pages of the content it was given', () => {
    expect(Object.keys(before)).toContain('press/log/2025-04-13-the-ram-slides/index.html');
    expect(Object.keys(after)).toEqual(expect.arrayContaining(['index.html', 'feed.atom']));
    expect(after['index.html']).not.toBe(before['index.html']);
  });
});

describe('a build that is killed', () => {
  it.each(Object.entries(moments))(
    '%s leaves the old site whole or the new one whole, and the next build works',
    (_, hasCome) =>
      inWorkshop({ 'site.yaml': NEW_SITE_YAML }, async (dirs) => {
        await cp(kept, dirs.dist, { recursive: true });
        const { child, ended } = startCommand(['build'], dirs);
        while (child.exitCode === null && !(await hasCome(dirs))) await wait(1);
        child.kill('SIGKILL');
        await ended;

        // Between two renames there is no folder in use; the old one lies whole beside it.
        const left = existsSync(dirs.dist) ? dirs.dist : join(dirs.work, 'dist-old');
        expect([before, after]).toContainEqual(await filesOf(left));

        const next = await runCommand(['build'], dirs);
        expect(next).toMatchObject({ status: 0, err: '' });
        expect(await filesOf(dirs.dist)).toEqual(after);
        expect(await leftBehind(dirs)).toEqual([]);
      }),
  );

  it('is followed by a good one even when its content has a mistake first', () =>
    inWorkshop({ 'site.yaml': 'title: x\n' }, async (dirs) => {
      await cp(kept, join(dirs.work, 'dist-old'), { recursive: true });
      expect((await runCommand(['build'], dirs)).status).toBe(1);

      await writeFile(join(dirs.content, 'site.yaml'), NEW_SITE_YAML);
      expect((await runCommand(['build'], dirs)).status).toBe(0);
      expect(await filesOf(dirs.dist)).toEqual(after);
    }));
});
