import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { writeSvg } from '../draw/svg.ts';
import { type Card, drawCard } from './draw-card.ts';
import { type Lettering, loadLettering } from './lettering.ts';

let lettering: Promise<Lettering> | undefined;

/** A card as PNG, kept under the hash of its drawing so that an unchanged one is made once. */
export async function makeCard(card: Card, cacheDir: string): Promise<Uint8Array> {
  lettering ??= loadLettering();
  const svg = writeSvg(drawCard(card, await lettering));
  const kept = join(cacheDir, `${createHash('sha256').update(svg).digest('hex').slice(0, 24)}.png`);
  try {
    return await readFile(kept);
  } catch {
    const png = await sharp(Buffer.from(svg)).flatten().png({ compressionLevel: 6 }).toBuffer();
    await mkdir(cacheDir, { recursive: true });
    await writeFile(`${kept}.${process.pid}.new`, png);
    await rename(`${kept}.${process.pid}.new`, kept);
    return png;
  }
}
