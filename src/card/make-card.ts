import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import sharp, { type OverlayOptions } from 'sharp';
import { writeSvg } from '../draw/svg.ts';
import { LIBRARY } from '../photo/library.ts';
import { writeDerived } from '../write/swap-in.ts';
import { type Card, drawCard, PHOTO } from './draw-card.ts';
import { type Lettering, loadLettering } from './lettering.ts';

let lettering: Promise<Lettering> | undefined;

/** A card as PNG, kept under the hash of its drawing and of what makes it, so that an unchanged one is made once. */
export async function makeCard(card: Card, cacheDir: string): Promise<Uint8Array> {
  lettering ??= loadLettering();
  const svg = writeSvg(drawCard(card, await lettering));
  // A derived photo is named by what it shows.
  const name = card.photo === undefined ? '' : basename(card.photo);
  const hash = createHash('sha256').update(LIBRARY).update(svg).update(name).digest('hex');
  const kept = join(cacheDir, `${hash.slice(0, 24)}.png`);
  try {
    return await readFile(kept);
  } catch {
    const overlays = card.photo === undefined ? [] : [await photoOverlay(card.photo)];
    const png = await sharp(Buffer.from(svg))
      .composite(overlays)
      .flatten()
      .png({ compressionLevel: 6 })
      .toBuffer();
    await writeDerived(kept, png);
    return png;
  }
}

async function photoOverlay(photo: string): Promise<OverlayOptions> {
  const { left, top, width, height } = PHOTO;
  const input = await sharp(photo).resize({ width, height, fit: 'cover' }).png().toBuffer();
  return { input, left, top };
}
