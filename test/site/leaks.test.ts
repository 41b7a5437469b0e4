import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { findLeaks } from '../../src/build/leaks.ts';

describe('findLeaks', () => {
  let home: string;
  const original = () => join(home, 'content/lathe/photos/bed.jpg');
  const published = (name: string) => join(home, 'site', name);
  const leaks = () => findLeaks(join(home, 'site'), join(home, 'content'));
  const grey = () => sharp({ create: { width: 40, height: 30, channels: 3, background: '#777' } });

  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'witnessmark-leaks-'));
    await mkdir(join(home, 'content/lathe/photos'), { recursive: true });
    await mkdir(join(home, 'site/photos'), { recursive: true });
    await grey().jpeg().toFile(original());
  });
  afterEach(() => rm(home, { recursive: true }));

  test('finds nothing in a site of derived pictures without metadata', async () => {
    await sharp(original()).webp().toFile(published('photos/bed.webp'));
    await grey().png().toFile(published('photos/plain.png'));
    expect(await leaks()).toEqual([]);
  });

  test('finds an original under its own name', async () => {
    await cp(original(), published('photos/bed.jpg'));
    expect(await leaks()).toEqual(['photos/bed.jpg']);
  });

  test('finds a receipt under another name', async () => {
    await mkdir(join(home, 'content/lathe/receipts'));
    await writeFile(join(home, 'content/lathe/receipts/26-014.pdf'), 'Paid, with thanks');
    await writeFile(published('bill.txt'), 'Paid, with thanks');
    expect(await leaks()).toEqual(['bill.txt']);
  });

  test('finds the secret of marks in whatever file holds it', async () => {
    const secret = 'a1'.repeat(32);
    await writeFile(join(home, 'content/lathe/marks-secret.txt'), `# keep\n1 ${secret}\n`);
    await writeFile(published('rows.jsonl'), `{"salt":"${secret}"}\n`);
    expect(await leaks()).toEqual(['rows.jsonl']);
  });

  test('finds a private number that somebody typed into a page, and none too short to mean anything', async () => {
    await writeFile(published('page.html'), '<p>Stamped W3-1931-204, on the frame</p>');
    const found = (numbers: string[]) =>
      findLeaks(join(home, 'site'), join(home, 'content'), numbers);
    expect(await found(['W3-1931-204'])).toEqual(['page.html']);
    expect(await found(['W3-1931-205', '204'])).toEqual([]);
    await writeFile(published('page.html'), '<p>A&amp;B &quot;W3-1931&#34;</p>');
    await writeFile(published('data.json'), JSON.stringify('A&B "W3-1931"'));
    expect(await found(['A&B "W3-1931'])).toEqual(['data.json', 'page.html']);
  });

  test('finds an original under another name and ending', async () => {
    await cp(original(), published('data.bin'));
    expect(await leaks()).toEqual(['data.bin']);
  });

  test.each([
    [
      'EXIF',
      () =>
        grey()
          .withExif({ IFD0: { Artist: 'someone' } })
          .webp(),
    ],
    ['XMP', () => grey().withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"></x:xmpmeta>').webp()],
    ['a colour profile', () => grey().withIccProfile('p3').webp()],
    [
      'EXIF in a PNG',
      () =>
        grey()
          .withExif({ IFD0: { Artist: 'someone' } })
          .png(),
    ],
    ['XMP in a PNG', () => grey().withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"/>').png()],
    ['a colour profile in a PNG', () => grey().withIccProfile('p3').png()],
    [
      'EXIF in a JPEG',
      () =>
        grey()
          .withExif({ IFD0: { Artist: 'someone' } })
          .jpeg(),
    ],
    [
      'EXIF in an AVIF',
      () =>
        grey()
          .withExif({ IFD0: { Artist: 'someone' } })
          .avif(),
    ],
  ])('finds a picture with %s', async (_, make) => {
    await make().toFile(published('photos/picture.webp'));
    expect(await leaks()).toEqual(['photos/picture.webp']);
  });
});
