import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** Parts of a PNG file that hold nothing but the picture: its size, colours, and how they are meant. */
const PNG_PARTS = new Set(['IHDR', 'PLTE', 'tRNS', 'gAMA', 'sRGB', 'pHYs', 'IDAT', 'IEND']);

/** Likewise of a WebP file. */
const WEBP_PARTS = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH']);

/** What the last part is. */
const LAST_PARTS = new Set(['IEND', 'VP8 ', 'VP8L']);

const PNG_SIGNATURE = '89504e470d0a1a0a';

/** A picture in more parts is looked at by the library for pictures. */
const MOST_PARTS = 50;

/** A file of parts that begin with their name and length: where the first is, and what to make of each head of eight bytes. */
interface Container {
  readonly first: number;
  readonly parts: ReadonlySet<string>;
  readonly next: (head: Buffer) => { name: string; bytes: number };
}

/**
 * Whether a PNG or WebP file certainly holds no metadata, seen by the names of its parts; a fraction of the work of opening it. False only
 * means that it has to be opened: it is of another kind, has a part that is not of the picture, or something after its end.
 */
export function isCertainlyBare(file: string): boolean {
  const opened = openSync(file, 'r');
  try {
    const { size } = fstatSync(opened);
    const read = (at: number, length: number) => {
      const bytes = Buffer.alloc(length);
      return bytes.subarray(0, readSync(opened, bytes, 0, length, at));
    };
    const container = containerOf(read(0, 12), size);
    if (container === undefined) return false;
    let at = container.first;
    let last = '';
    for (let count = 0; at < size && last !== 'IEND'; count++) {
      const head = read(at, 8);
      if (head.length < 8 || count === MOST_PARTS) return false;
      const { name, bytes } = container.next(head);
      if (!container.parts.has(name)) return false;
      at += bytes;
      last = name;
    }
    return at === size && LAST_PARTS.has(last);
  } finally {
    closeSync(opened);
  }
}

function containerOf(start: Buffer, size: number): Container | undefined {
  const isPng = start.toString('hex', 0, 8) === PNG_SIGNATURE;
  if (isPng) return { first: 8, parts: PNG_PARTS, next: pngPart };
  const isWebp =
    start.toString('latin1', 0, 4) === 'RIFF' && start.toString('latin1', 8, 12) === 'WEBP';
  if (isWebp && start.readUInt32LE(4) === size - 8)
    return { first: 12, parts: WEBP_PARTS, next: webpPart };
  return undefined;
}

/** Length, name, data, checksum. */
function pngPart(head: Buffer): { name: string; bytes: number } {
  return { name: head.toString('latin1', 4), bytes: head.readUInt32BE(0) + 12 };
}

/** Name, length, data, and a byte more where that is odd. */
function webpPart(head: Buffer): { name: string; bytes: number } {
  const length = head.readUInt32LE(4);
  return { name: head.toString('latin1', 0, 4), bytes: 8 + length + (length % 2) };
}
