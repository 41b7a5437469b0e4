import { constants, crc32, deflateSync } from 'node:zlib';
import type { Sheet } from './sheet.ts';

const SIGNATURE = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** PNG filter: each byte as its difference from the one above. */
const UP = 2;

/** A sheet as PNG (W3C, PNG Third Edition) with no more in it than must be. The palette has three bytes for each colour. */
export function writeIndexedPng(sheet: Sheet, palette: Uint8Array): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(sheet.width, 0);
  head.writeUInt32BE(sheet.height, 4);
  // Eight bits a pixel, by palette.
  head.set([8, 3], 8);
  // To look for runs alone takes a fraction of the time, and the bytes are the same on any machine: how else the library looks depends on the processor.
  const packed = deflateSync(differences(sheet), { memLevel: 9, strategy: constants.Z_RLE });
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', head),
    chunk('PLTE', palette),
    chunk('IDAT', packed),
    chunk('IEND', new Uint8Array()),
  ]);
}

/** Kept from picture to picture, since memory of this size costs much to be cleared. */
let lines = new Uint8Array();

function differences({ width, height, pixels }: Sheet): Uint8Array {
  if (lines.length === (width + 1) * height) lines.fill(0);
  else lines = new Uint8Array((width + 1) * height);
  const all = Buffer.from(pixels.buffer, pixels.byteOffset, pixels.byteLength);
  lines[0] = UP;
  lines.set(pixels.subarray(0, width), 1);
  for (let row = 1; row < height; row++) {
    const from = row * width;
    const to = from + row + 1;
    lines[to - 1] = UP;
    // Most rows are the same as the one above, which is quickly seen.
    if (all.compare(all, from - width, from, from, from + width) === 0) continue;
    for (let index = 0; index < width; index++)
      lines[to + index] = (pixels[from + index] ?? 0) - (pixels[from + index - width] ?? 0);
  }
  return lines;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = Buffer.alloc(data.length + 12);
  bytes.writeUInt32BE(data.length);
  bytes.write(type, 4, 'latin1');
  bytes.set(data, 8);
  bytes.writeUInt32BE(crc32(bytes.subarray(4, data.length + 8)), data.length + 8);
  return bytes;
}
