import sharp, { type Sharp } from 'sharp';

/** Pixels that are decoded at the most: 100 megapixels, so that a small file cannot ask for all memory. */
export const MOST_PIXELS = 100_000_000;

/** An original as the image library reads it: upright, in sRGB, its first picture only. */
export function decode(bytes: Uint8Array): Sharp {
  return sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error', pages: 1 })
    .autoOrient()
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb');
}
