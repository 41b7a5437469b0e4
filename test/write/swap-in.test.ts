import {
  chmod,
  lstat,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  stat,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { placeFile, writeNew } from '../../src/write/place-file.ts';
import { writeWhole } from '../../src/write/swap-in.ts';

async function inFolder(use: (folder: string) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-whole-'));
  try {
    await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const modeOf = async (path: string) => ((await stat(path)).mode & 0o777).toString(8);

describe('a file that is written whole', () => {
  it('keeps who may read it, and gets the mode that is asked for', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'hours.csv');
      await writeFile(path, 'before');
      await chmod(path, 0o640);
      await writeWhole(path, 'after');
      expect([await readFile(path, 'utf8'), await modeOf(path)]).toEqual(['after', '640']);
      await writeWhole(path, 'secret', { mode: 0o600 });
      expect(await modeOf(path)).toBe('600');
      expect(await readdir(folder)).toEqual(['hours.csv']);
    }));

  it('never writes through a link that lies where it is made', () =>
    inFolder(async (folder) => {
      const [path, elsewhere] = [join(folder, 'hours.csv'), join(folder, 'elsewhere')];
      await writeFile(elsewhere, 'as it was');
      await writeFile(path, 'before');
      await symlink(elsewhere, join(folder, '.hours.csv.new'));
      await writeWhole(path, 'after');
      expect(await readFile(elsewhere, 'utf8')).toBe('as it was');
      expect(await readFile(path, 'utf8')).toBe('after');
      expect((await lstat(path)).isSymbolicLink()).toBe(false);
    }));

  it('is the file that a link leads to', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'elsewhere'));
      await writeFile(join(folder, 'elsewhere/real.csv'), 'before');
      await symlink('elsewhere/real.csv', join(folder, 'hours.csv'));
      await writeWhole(join(folder, 'hours.csv'), 'after');
      expect((await lstat(join(folder, 'hours.csv'))).isSymbolicLink()).toBe(true);
      expect(await readFile(join(folder, 'elsewhere/real.csv'), 'utf8')).toBe('after');
    }));

  it('leaves nothing beside its place when it can not be put there, and says which it was', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'hours.csv/inside'), { recursive: true });
      await expect(writeWhole(join(folder, 'hours.csv'), 'after')).rejects.toMatchObject({
        code: expect.stringMatching(/^E(ISDIR|EXIST|NOTEMPTY|PERM)$/),
      });
      expect(await readdir(folder)).toEqual(['hours.csv']);
    }));
});

describe('a file under a name that nobody has', () => {
  it('is never written over another, from another disk either', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'a.jpg');
      expect(await writeNew(path, 'first')).toBe(true);
      expect(await writeNew(path, 'second')).toBe(false);
      const far = await mkdtemp('/dev/shm/witnessmark-').catch(() => mkdtemp(`${folder}/far-`));
      await writeFile(join(far, 'whole'), 'third');
      expect(await placeFile(join(far, 'whole'), path)).toBe(false);
      expect(await placeFile(join(far, 'whole'), join(folder, 'b.jpg'))).toBe(true);
      expect(await readFile(path, 'utf8')).toBe('first');
      expect(await readFile(join(folder, 'b.jpg'), 'utf8')).toBe('third');
      await rm(far, { recursive: true });
      expect((await readdir(folder)).sort()).toEqual(['a.jpg', 'b.jpg']);
    }));
});
