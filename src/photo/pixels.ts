import sharp, { type Sharp } from 'sharp';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A picture between two steps that can't be one: its pixels, without anything else. */
export interface Pixels extends Size {
  readonly data: Buffer;
  readonly channels: 3;
}

/** Goes on from pixels. */
export function fromPixels({ data, width, height, channels }: Pixels): Sharp {
  return sharp(data, { raw: { width, height, channels }, limitInputPixels: false });
}

/** Carries out what was asked of a picture so far. */
export async function pixelsOf(picture: Sharp): Promise<Pixels> {
  const { data, info } = await picture.removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height, channels: 3 };
}
