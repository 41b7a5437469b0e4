import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { unreadable } from '../../src/photo/problems.ts';
import { inPhotoFolder } from './photo-folder.ts';

const noise = await sharp({
  create: {
    width: 400,
    height: 300,
    channels: 3,
    background: '#888',
    noise: { type: 'gaussian', mean: 128, sigma: 40 },
  },
})
  .jpeg()
  .toBuffer();

const AGAIN = 'copy it from the camera again';
const ANEW = 'export it anew as JPEG';

/** The first box of a file with HEVC pictures (ISO/IEC 14496-12, 4.3; ISO/IEC 23008-12, B.4). */
const HEIC = Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0mif1heic', 'latin1');

/** A PNG of a few bytes that says it has four hundred million pixels. */
function hugePng(): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(20_000, 0);
  head.writeUInt32BE(20_000, 4);
  head.set([8, 2], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(Buffer.alloc(64))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

describe('a photo that cannot be read', () => {
  test.each([
    ['is empty', Buffer.alloc(0), 'the file is empty', AGAIN],
    [
      'is no picture',
      Buffer.from('a note that was named .jpg by mistake'),
      'it is no picture',
      ANEW,
    ],
    [
      'was cut off half way',
      noise.subarray(0, noise.length / 2),
      'it is damaged or cut off',
      AGAIN,
    ],
    ['has only its first bytes', noise.subarray(0, 20), 'it is damaged or cut off', AGAIN],
    [
      'asks for more memory than any camera needs',
      hugePng(),
      'it asks for more than 100 megapixels',
      'make it smaller',
    ],
    [
      'is HEIC',
      HEIC,
      'it is HEIC, which the image library here does not read',
      `${ANEW}, or set the phone to take JPEG ("most compatible")`,
    ],
  ])(
    'because it %s, is a problem at its file and stops nothing else',
    async (_, bytes, message, fix) => {
      await inPhotoFolder({ 'bad.jpg': bytes, 'good.jpg': noise }, async (folder) => {
        expect(await folder.derive()).toEqual([
          {
            level: 'error',
            code: 'photo/unreadable',
            file: 'press/photos/bad.jpg',
            line: 1,
            column: 1,
            message: `the photo can't be read: ${message}`,
            fix,
          },
        ]);
        expect(Object.keys(await folder.manifest())).toEqual(['press/good.jpg']);
      });
    },
  );
});

test('a library that lost its own words has still met a damaged file', () => {
  const { message } = unreadable('press/photos/bad.jpg', 'Unknown error', noise.subarray(0, 32));
  expect(message).toBe("the photo can't be read: it is damaged or cut off");
});
