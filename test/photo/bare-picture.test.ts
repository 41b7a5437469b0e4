import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isCertainlyBare } from '../../src/photo/bare-picture.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-bare-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function isBare(bytes: Uint8Array): Promise<boolean> {
  const file = join(folder, 'picture');
  await writeFile(file, bytes);
  return isCertainlyBare(file);
}

/** A picture with an odd number of bytes in some part, with and without an alpha channel. */
const picture = (alpha = 1): Sharp =>
  sharp({
    create: { width: 41, height: 30, channels: 4, background: { r: 9, g: 99, b: 9, alpha } },
  });
const exif = { IFD0: { Artist: 'someone' } };
const xmp = '<x:xmpmeta xmlns:x="adobe:ns:meta/"/>';

describe('a picture', () => {
  test.each([
    ['PNG', () => picture().png()],
    ['PNG with a palette', () => picture(0.5).png({ palette: true })],
    ['WebP', () => picture().webp()],
    ['WebP with alpha', () => picture(0.5).webp()],
    ['WebP without loss', () => picture(0.5).webp({ lossless: true })],
  ])('of the kind %s is bare, until something is added or missing', async (_, make) => {
    const bytes = await make().toBuffer();
    expect(await isBare(bytes)).toBe(true);
    expect(await isBare(Buffer.concat([bytes, Buffer.from('and more')]))).toBe(false);
    expect(await isBare(bytes.subarray(0, -3))).toBe(false);
    for (const made of [
      make().withExif(exif),
      make().withXmp(xmp),
      make().withIccProfile('p3'),
      make().withMetadata(),
    ]) {
      const metadata = await made.toBuffer();
      expect(await isBare(metadata)).toBe(false);
    }
  });

  test.each(['tEXt', 'zTXt', 'iTXt', 'eXIf', 'tIME', 'iCCP', 'prVW'])(
    'with a part %s of PNG is not',
    async (name) => {
      const png = await picture().png().toBuffer();
      const body = Buffer.concat([Buffer.from(name), Buffer.from('Author\0someone')]);
      const part = Buffer.alloc(body.length + 8);
      part.writeUInt32BE(body.length - 4);
      part.set(body, 4);
      part.writeUInt32BE(crc32(body), body.length + 4);
      // Before the last part and before the first that holds pixels.
      for (const at of [png.length - 12, png.indexOf('IDAT') - 4])
        expect(await isBare(Buffer.concat([png.subarray(0, at), part, png.subarray(at)]))).toBe(
          false,
        );
    },
  );

  test.each(['EXIF', 'XMP ', 'ICCP', 'note'])('with a part %s of WebP is not', async (name) => {
    const webp = await picture().webp().toBuffer();
    const part = Buffer.concat([Buffer.from(name), Buffer.from([4, 0, 0, 0]), Buffer.from('some')]);
    const made = Buffer.concat([webp, part]);
    made.writeUInt32LE(made.length - 8, 4);
    expect(await isBare(made)).toBe(false);
  });

  test('of another kind is left to others, and so is what is none', async () => {
    expect(await isBare(await picture().jpeg().toBuffer())).toBe(false);
    expect(await isBare(await picture().avif().toBuffer())).toBe(false);
    expect(await isBare(Buffer.from('text'))).toBe(false);
    expect(await isBare(new Uint8Array())).toBe(false);
    expect(await isBare(Buffer.from('89504e470d0a1a0a', 'hex'))).toBe(false);
  });
});
