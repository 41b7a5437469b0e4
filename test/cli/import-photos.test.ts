import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { phoneExif } from '../../src/demo/phone-exif.ts';
import { entryFor } from '../../src/import/photo-entry.ts';
import type { Day } from '../../src/time/day.ts';
import { type Dirs, filesOf, inWorkshop, runCommand } from './run-command.ts';

const picture = (day: string | undefined, red: number) => {
  const plain = sharp({
    create: { width: 40, height: 30, channels: 3, background: { r: red, g: 80, b: 90 } },
  });
  return (day ? plain.withExif(phoneExif(day)) : plain).jpeg().toBuffer();
};

async function camera(dirs: Dirs): Promise<string> {
  const folder = join(dirs.dist, '..', 'camera');
  await mkdir(join(folder, 'older'), { recursive: true });
  const files = {
    'IMG_0001.JPG': await picture('2025-04-13', 10),
    'IMG_0002.JPG': await picture('2025-04-01', 20),
    'IMG_0003.JPG': await picture('2025-05-01', 30),
    'IMG_0003 copy.JPG': await picture('2025-05-01', 30),
    'scan.png': await sharp(await picture(undefined, 40))
      .png()
      .toBuffer(),
    'film.mp4': Buffer.from('no picture at all'),
    'cut.jpg': (await picture('2025-04-13', 50)).subarray(0, 20),
  };
  for (const [name, bytes] of Object.entries(files)) await writeFile(join(folder, name), bytes);
  return folder;
}

const sha = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const sumOf = (out: string) => /^\d+ files = .*$/m.exec(out)?.[0];

describe('import of a folder of pictures', () => {
  it('shows where each belongs and copies nothing', () =>
    inWorkshop({}, async (dirs) => {
      const before = await filesOf(dirs.content);
      const { status, out } = await runCommand(['import', await camera(dirs)], dirs);
      expect(status).toBe(1);
      expect(out).toMatchInlineSnapshot(`
        "IMG_0001.JPG       add      2025-04-13 → 2025-04-13-the-ram-slides · says where it was taken
        IMG_0002.JPG       add      2025-04-01 → 2025-04-13-the-ram-slides · says where it was taken
        IMG_0003 copy.JPG  add      2025-05-01 → no entry since: for the next one you write · says where it was taken
        IMG_0003.JPG       known    as IMG_0003 copy.JPG
        cut.jpg            refused  the photo can't be read: it is damaged or cut off
        film.mp4           refused  the photo can't be read: it is no picture
        older              refused  it is a folder; import it by itself
        scan.png           add      the file names no day → no entry

        8 files = 4 to add + 1 known + 3 refused
        Nothing is copied yet: add --write.
        "
      `);
      expect(await filesOf(dirs.content)).toEqual(before);
    }));

  it('copies originals byte for byte, once, and writes no record', () =>
    inWorkshop({}, async (dirs) => {
      const folder = await camera(dirs);
      const before = await filesOf(dirs.content);
      const first = await runCommand(['import', folder, '--project', 'press', '--write'], dirs);
      expect(sumOf(first.out)).toBe('8 files = 4 added + 1 known + 3 refused');
      expect(first.out).toContain('Look at each picture for what must be hidden first');
      expect(first.out).toContain('file: img-0002.jpg');
      expect(first.out).not.toMatch(/^\s*nothing-to-hide: true/m);
      const photos = join(dirs.content, 'press/photos');
      expect((await readdir(photos)).sort()).toEqual([
        'img-0001.jpg',
        'img-0002.jpg',
        'img-0003-copy.jpg',
        'ram.jpg',
        'scan.png',
      ]);
      expect(sha(await readFile(join(photos, 'img-0001.jpg')))).toBe(
        sha(await readFile(join(folder, 'IMG_0001.JPG'))),
      );
      const after = await filesOf(dirs.content);
      const changed = Object.keys(after).filter((path) => after[path] !== before[path]);
      expect(changed.every((path) => /^(press\/photos|\.witnessmark)\//.test(path))).toBe(true);

      const second = await runCommand(['import', folder, '--write'], dirs);
      expect(sumOf(second.out)).toBe('8 files = 0 added + 5 known + 3 refused');
      expect(await filesOf(dirs.content)).toEqual(after);
    }));

  it('asks for a project that is there', () =>
    inWorkshop({}, async (dirs) => {
      const { status, err } = await runCommand(
        ['import', await camera(dirs), '--project', 'pres'],
        dirs,
      );
      expect([status, err]).toEqual([2, expect.stringContaining('There is no project "pres"')]);
    }));
});

it('A photo belongs to the entry of its day, else to the next', () => {
  const entries = ['2025-03-09', '2025-03-20', '2025-03-02'].map((date) => ({
    slug: date,
    date: date as Day,
  }));
  const slug = (day: string | undefined) => entryFor(day as Day | undefined, entries)?.slug;
  expect(slug('2025-03-09')).toBe('2025-03-09');
  expect(slug('2025-03-03')).toBe('2025-03-09');
  expect(slug('2025-03-21')).toBeUndefined();
  expect(slug(undefined)).toBeUndefined();
});
