import sharp, { type Sharp } from 'sharp';
import { FORMATS, type PhotoSize } from './manifest.ts';
import { ENCODERS } from './recipe.ts';

/**
 * Makes every size of a picture from one decoding: the largest is shrunk while it is decoded, each smaller one comes from the one above.
 * Hands over every file as it is made. Pixels are copied and nothing else: no EXIF, no place, no colour profile.
 */
export async function encodeSizes(
  picture: Sharp,
  sizes: readonly PhotoSize[],
  keep: (file: string, bytes: Buffer) => Promise<void>,
): Promise<void> {
  let above = picture;
  for (const { width, height, files } of [...sizes].reverse()) {
    const { data, info } = await above
      .resize(width, height, { fit: 'fill' })
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const { channels } = info;
    const pixels = () => sharp(data, { raw: { width, height, channels } });
    for (const format of FORMATS)
      await keep(files[format], await pixels()[format](ENCODERS[format]).toBuffer());
    above = pixels();
  }
}
