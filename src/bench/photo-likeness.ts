import sharp from 'sharp';
import { ssim } from 'ssim.js';

/** Likeness of a derived picture to its original made as small without any loss: mean SSIM of luma, 1 is the same. */
export async function likeness(original: string, derived: string): Promise<number> {
  const made = await sharp(derived).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const { width, height } = made.info;
  const wanted = await sharp(original)
    .autoOrient()
    .resize({ width, height, fit: 'fill', fastShrinkOnLoad: false })
    .ensureAlpha()
    .raw()
    .toBuffer();
  return ssim(picture(wanted, width, height), picture(made.data, width, height)).mssim;
}

function picture(data: Buffer, width: number, height: number) {
  return { data: new Uint8ClampedArray(data), width, height, colorSpace: 'srgb' as const };
}
