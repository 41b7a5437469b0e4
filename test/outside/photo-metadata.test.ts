import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import exifr from 'exifr';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, inject, test } from 'vitest';
import { inPhotoFolder } from '../photo/photo-folder.ts';
import { filesOf } from '../site/pages.ts';
import { webpChunks } from './webp-chunks.ts';

const site = inject('site');

/** Chunks that hold pixels; EXIF, XMP and ICCP are what else the format knows (RFC 9649 section 2.7). */
const PIXELS = ['VP8', 'VP8L'];

/** A picture that says who took it, where, and on what screen. */
const tellTale = (): Sharp =>
  sharp({ create: { width: 60, height: 40, channels: 3, background: '#963' } })
    .withExif({
      IFD0: { Artist: 'A. Neighbour' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '54/1 18/1 0/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '2/1 0/1 0/1',
      },
    })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"></x:xmpmeta>')
    .withIccProfile('p3');

describe('published photos', () => {
  const pictures = filesOf(site.folder).filter((file) =>
    /\.(avif|gif|jpe?g|png|tiff?|webp)$/i.test(file),
  );

  const photos = pictures.filter((file) => file.startsWith('photos'));

  test('that are WebP files hold pixels and nothing else, to the last byte', async () => {
    const files = photos.filter((file) => file.endsWith('.webp'));
    expect(files.length).toBeGreaterThan(50);
    for (const file of files) {
      const chunks = [...webpChunks(await readFile(join(site.folder, file))).keys()];
      expect(PIXELS, file).toContain(chunks[0]);
      expect(chunks, file).toHaveLength(1);
    }
  });

  test('that are AVIF files hold one coded picture and no block of metadata', async () => {
    const files = photos.filter((file) => file.endsWith('.avif'));
    expect(files.length * 2).toBe(photos.length);
    for (const file of files) {
      const bytes = await readFile(join(site.folder, file));
      // Item types of ISO/IEC 23008-12 annex A and the profile of a colour box (ISO/IEC 14496-12, 12.1.5) stand before the pixels.
      const head = bytes.toString('latin1', 0, bytes.indexOf('mdat'));
      expect(head, file).toMatch(/^....ftypavif/s);
      expect(head.match(/Exif|mime|xml |uri |uuid|prof|rICC/g), file).toBeNull();
    }
  });

  test('that are cards are PNG files of pixels and nothing else', async () => {
    const cards = pictures.filter((file) => !file.startsWith('photos'));
    expect(cards.length).toBeGreaterThan(50);
    for (const file of cards) {
      expect(file).toMatch(/^cards.*\.png$/);
      const names = pngChunks(await readFile(join(site.folder, file)));
      // Header, colours or (with a photo) pixel density, pixels, end.
      const second = names.includes('PLTE') ? 'PLTE' : 'pHYs';
      expect(new Set(names), file).toEqual(new Set(['IHDR', second, 'IDAT', 'IEND']));
    }
  });

  test('come from originals in which a reader of metadata finds a place and a name', async () => {
    const originals = filesOf(site.content).filter((file) => /\.jpe?g$/i.test(file));
    for (const file of originals) {
      const { Artist, latitude } = await exifr.parse(join(site.content, file), { gps: true });
      expect([Artist, latitude], file).toEqual([
        expect.stringContaining('undisclosed'),
        expect.any(Number),
      ]);
    }
  });
});

test.each([
  ['jpg', () => tellTale().jpeg()],
  ['png', () => tellTale().png()],
  ['webp', () => tellTale().webp()],
  ['avif', () => tellTale().avif()],
  ['tiff', () => tellTale().tiff()],
])('a photo in %s format loses what it tells when its sizes are derived', async (ending, make) => {
  await inPhotoFolder({ [`ram.${ending}`]: await make().toBuffer() }, async (folder) => {
    const problems = await folder.derive();
    // The image library writes no place into a TIFF.
    const places = ending === 'tiff' ? [] : ['photo/not-looked-at'];
    expect(problems.map(({ code }) => code)).toEqual(places);
    const [size] = (await folder.manifest())[`press/ram.${ending}`]?.sizes ?? [];
    const derived = await readFile(join(folder.derived, size?.files.webp ?? ''));
    expect([...webpChunks(derived).keys()]).toEqual(['VP8']);
  });
});

describe('the look for metadata', () => {
  test('finds EXIF with name and place, XMP and a colour profile', async () => {
    const chunks = webpChunks(await tellTale().webp().toBuffer());
    expect([...chunks.keys()]).toEqual(expect.arrayContaining(['EXIF', 'XMP', 'ICCP']));
    const exif = chunks.get('EXIF') ?? Buffer.alloc(0);
    const { Artist, latitude } = await exifr.parse(exif.subarray(exif.indexOf('II*')), {
      gps: true,
    });
    expect(Artist).toBe('A. Neighbour');
    expect(latitude).toBeCloseTo(54.3, 6);
  });

  test('finds bytes that are hung on after the end', async () => {
    const plain = await sharp({ create: { width: 9, height: 9, channels: 3, background: '#000' } })
      .webp()
      .toBuffer();
    expect([...webpChunks(Buffer.concat([plain, Buffer.from('a clip')])).keys()]).toEqual([
      'VP8',
      'after the end',
    ]);
  });
});

/** Names of the chunks of a PNG file, in order (PNG specification, third edition, 5.3). */
function pngChunks(bytes: Uint8Array): string[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const names: string[] = [];
  for (let offset = 8; offset < bytes.length; offset += view.getUint32(offset) + 12) {
    names.push(String.fromCharCode(...bytes.subarray(offset + 4, offset + 8)));
  }
  return names;
}
