import { mkdir, mkdtemp, readdir, readlink, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { replaceFolder } from '../../src/build/replace-folder.ts';
import { filesOf } from '../cli/run-command.ts';

/** A folder in use that holds one file, and a place for work, as text files by path. */
async function workshop(files: Readonly<Record<string, string>>) {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-replace-'));
  onTestFinished(() => rm(home, { recursive: true, force: true }));
  for (const [path, text] of Object.entries(files)) {
    await mkdir(join(home, path, '..'), { recursive: true });
    await writeFile(join(home, path), text);
  }
  const paths = async () => Object.keys(await filesOf(home));
  return { home, dist: join(home, 'dist'), work: join(home, 'work'), paths };
}

async function writeFresh(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'new.html'), 'new');
}

describe('a folder that is made anew', () => {
  it('takes the place of the old one whole, when it is swapped in and not before', async () => {
    const { dist, work, paths } = await workshop({ 'dist/old.html': 'old' });
    const target = await replaceFolder(dist, work);
    await writeFresh(target.fresh);
    expect(await paths()).toEqual(['dist/old.html', `work/dist-new-${process.pid}/new.html`]);

    await target.swapIn();
    expect(await paths()).toEqual(['dist/new.html']);
    expect(await readdir(work)).toEqual([]);
  });

  it('may be the first, in a place that is not there yet', async () => {
    const { home, work, paths } = await workshop({});
    const target = await replaceFolder(join(home, 'public', 'site'), work);
    await writeFresh(target.fresh);
    await target.swapIn();
    expect(await paths()).toEqual(['public/site/new.html']);
  });

  it('may be thrown away, and the old one stays', async () => {
    const { dist, work, paths } = await workshop({ 'dist/old.html': 'old' });
    const target = await replaceFolder(dist, work);
    await writeFresh(target.fresh);
    await target.discard();
    expect(await paths()).toEqual(['dist/old.html']);
  });
});

describe('a place that is not plain', () => {
  it('may be a link, which stays', async () => {
    const { home, dist, work, paths } = await workshop({ 'served/old.html': 'old' });
    await symlink(join(home, 'served'), dist);
    const target = await replaceFolder(dist, work);
    await writeFresh(target.fresh);
    await target.swapIn();
    expect(await readlink(dist)).toBe(join(home, 'served'));
    expect(await paths()).toEqual(['served/new.html']);
  });

  it('may be on another disk than the work folder', async () => {
    const { dist, paths } = await workshop({ 'dist/old.html': 'old' });
    const far = await mkdtemp('/dev/shm/witnessmark-').catch(() => undefined);
    if (far === undefined || (await stat(far)).dev === (await stat(dist)).dev) {
      process.stderr.write('skipped: there is no other disk here\n');
      return;
    }
    onTestFinished(() => rm(far, { recursive: true, force: true }));
    const target = await replaceFolder(dist, far);
    await writeFresh(target.fresh);
    await target.swapIn();
    expect(await paths()).toEqual(['dist/new.html']);
    expect(await readdir(far)).toEqual([]);
  });

  it('is as it was when the new one can not be put there', async () => {
    const { dist, work, paths } = await workshop({ 'dist/old.html': 'old' });
    const target = await replaceFolder(dist, work);
    await expect(target.swapIn()).rejects.toMatchObject({ code: 'ENOENT' });
    expect(await paths()).toEqual(['dist/old.html']);
  });
});

describe('what a killed run has left', () => {
  it('is cleared away, and nothing else in the work folder is', async () => {
    const { dist, work, paths } = await workshop({
      'dist/old.html': 'old',
      'work/dist-new-123/half.html': 'half',
      'work/dist-old/older.html': 'older',
      'work/public/photos/x.webp': 'x',
      'work/dist-newer/keep': 'keep',
    });
    await replaceFolder(dist, work);
    expect(await paths()).toEqual([
      'dist/old.html',
      'work/dist-newer/keep',
      'work/public/photos/x.webp',
    ]);
  });

  it('beside the site, where it was copied from another disk, goes too', async () => {
    const { dist, work, paths } = await workshop({
      '.dist.tmp.old/old.html': 'old',
      '.dist.tmp.new/half.html': 'half',
    });
    await replaceFolder(dist, work);
    expect(await paths()).toEqual(['dist/old.html']);
  });

  it('between its two renames is the old folder, which comes back', async () => {
    const { dist, work, paths } = await workshop({
      'work/dist-old/old.html': 'old',
      'work/dist-new-123/new.html': 'new',
    });
    const target = await replaceFolder(dist, work);
    expect(await paths()).toEqual(['dist/old.html']);
    await target.discard();
    expect(await paths()).toEqual(['dist/old.html']);
  });
});
