import sharp from 'sharp';
import { MOST_PIXELS } from '../photo/decode.ts';
import { glanceAt } from '../photo/glance.ts';
import type { Day } from '../time/day.ts';

/** A picture made anew from the pixels of what came. */
export interface Picture {
  readonly bytes: Uint8Array;
  readonly taken: Day | undefined;
}

/** Longest side that is kept. */
const LONGEST = 4096;

/** First bytes of the formats that are taken. Whatever else the library can open (SVG, PDF, TIFF …) is not handed to it. */
const HEADS: readonly (readonly [at: number, bytes: string])[] = [
  [0, '\xff\xd8\xff'],
  [0, '\x89PNG\r\n\x1a\n'],
  [8, 'WEBP'],
  [4, 'ftypavif'],
];

/**
 * Checks that bytes are a picture and makes a JPEG of its pixels: upright, sRGB, nothing of its metadata but the day it was taken.
 * Undefined when they are none, are damaged, or ask for more than 100 megapixels.
 */
export async function remake(bytes: Uint8Array): Promise<Picture | undefined> {
  const head = Buffer.from(bytes.subarray(0, 16)).toString('latin1');
  if (!HEADS.some(([at, start]) => head.startsWith(start, at))) return undefined;
  try {
    const { taken } = await glanceAt(bytes);
    const picture = sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error', pages: 1 })
      .autoOrient()
      .flatten({ background: '#ffffff' })
      .resize(LONGEST, LONGEST, { fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb')
      .jpeg({ quality: 92, chromaSubsampling: '4:4:4' });
    // A time that is not known is written as blanks (EXIF 2.32, DateTimeOriginal).
    const dated =
      taken === undefined
        ? picture
        : picture.withExif({
            IFD2: { DateTimeOriginal: `${taken.replaceAll('-', ':')}   :  :  ` },
          });
    return { bytes: await dated.toBuffer(), taken };
  } catch {
    return undefined;
  }
}
