import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { LIBRARY } from '../photo/library.ts';
import { writeDerived } from '../write/swap-in.ts';
import { CARD, type Card, COLOURS, drawCard, PHOTO } from './draw-card.ts';
import { writeIndexedPng } from './indexed-png.ts';
import { type Lettering, loadLettering } from './lettering.ts';
import { PALETTE, paintCard } from './paint-card.ts';
import type { Sheet } from './sheet.ts';

/** Must be another one whenever the same drawing is to become another picture. */
const PAINTING = 2;

let lettering: Promise<Lettering> | undefined;

/** A card as PNG, kept under the hash of its drawing and of what makes it, so that an unchanged one is made once. */
export async function makeCard(card: Card, cacheDir: string): Promise<Uint8Array> {
  lettering ??= loadLettering();
  const letters = await lettering;
  const drawing = drawCard(card, letters);
  // A derived photo is named by what it shows.
  const photo = card.photo === undefined ? '' : basename(card.photo);
  const all = JSON.stringify([PAINTING, LIBRARY, letters.version, COLOURS, drawing, photo]);
  const hash = createHash('sha256').update(all).digest('hex');
  const kept = join(cacheDir, `${hash.slice(0, 24)}.png`);
  try {
    return await readFile(kept);
  } catch {
    const sheet = paintCard(drawing, letters);
    const png =
      card.photo === undefined
        ? writeIndexedPng(sheet, PALETTE)
        : await withPhoto(inColours(sheet), card.photo);
    await writeDerived(kept, png);
    return png;
  }
}

/** A photo has more colours than a palette, so the whole card is in true colour. */
function inColours({ pixels }: Sheet): Uint8Array {
  const colours = new Uint8Array(3 * pixels.length);
  for (let at = 0; at < pixels.length; at++) {
    const colour = 3 * (pixels[at] ?? 0);
    for (let part = 0; part < 3; part++) colours[3 * at + part] = PALETTE[colour + part] ?? 0;
  }
  return colours;
}

async function withPhoto(colours: Uint8Array, photo: string): Promise<Uint8Array> {
  const { left, top, ...size } = PHOTO;
  const shown = await sharp(photo)
    .resize({ ...size, fit: 'cover' })
    .flatten({ background: COLOURS.paper })
    .toColourspace('srgb')
    .raw()
    .toBuffer();
  for (let row = 0; row < size.height; row++)
    colours.set(
      shown.subarray(3 * row * size.width, 3 * (row + 1) * size.width),
      3 * ((top + row) * CARD.width + left),
    );
  return sharp(colours, { raw: { ...CARD, channels: 3 } })
    .png({ compressionLevel: 6 })
    .toBuffer();
}
