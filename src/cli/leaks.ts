import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import sharp from 'sharp';

const PICTURE = /\.(avif|gif|heic|jpe?g|png|tiff?|webp)$/i;

/**
 * Files of a built site that must not leave the house: a byte-for-byte copy of an original photo under any name, or a picture that
 * still carries metadata. A last gate, since a build tool can publish an original without being asked.
 */
export async function findLeaks(site: string, contentDir: string): Promise<string[]> {
  const originals = new Set<string>();
  for (const file of await filesIn(contentDir)) {
    if (/[\\/]photos[\\/]/.test(file)) originals.add(await hashOf(file));
  }

  const leaks: string[] = [];
  for (const file of await filesIn(site)) {
    const copied = originals.size > 0 && originals.has(await hashOf(file));
    if (copied || (PICTURE.test(file) && (await hasMetadata(file))))
      leaks.push(relative(site, file));
  }
  return leaks;
}

async function filesIn(folder: string): Promise<string[]> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true });
  return items.filter((item) => item.isFile()).map((item) => join(item.parentPath, item.name));
}

async function hashOf(file: string): Promise<string> {
  return createHash('sha256')
    .update(await readFile(file))
    .digest('hex');
}

async function hasMetadata(file: string): Promise<boolean> {
  const { exif, xmp, iptc, icc } = await sharp(file).metadata();
  return [exif, xmp, iptc, icc].some((block) => block !== undefined);
}
