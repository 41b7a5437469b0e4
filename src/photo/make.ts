import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { writeDerived } from '../write/swap-in.ts';
import { type KnownOriginal, type PhotoCache, stemOf } from './cache.ts';
import { decode } from './decode.ts';
import { edit, editedSize } from './edit.ts';
import { encodeSizes } from './encode.ts';
import { intoFrame } from './frame.ts';
import type { SeenPhoto } from './look.ts';
import { FORMATS, type PublishedPhoto } from './manifest.ts';
import { isEdited, recipeName, sizesOf } from './recipe.ts';

/** Makes what the cache lacks of one photo's sizes. */
export async function make(photo: SeenPhoto, cache: PhotoCache): Promise<KnownOriginal> {
  const edits = photo.record ?? {};
  const bytes = await readFile(photo.path);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const original = {
    ...photo.glance,
    stamp: photo.stamp,
    sha256,
    recipe: recipeName(edits, photo.frame),
  };
  const { sizes } = published(photo, { ...original, colour: '' });
  if (!filesOf(sizes).every((file) => cache.files.has(file))) {
    const upright = decode(bytes);
    const edited = isEdited(edits) ? await edit(upright, edits) : upright;
    await encodeSizes(
      photo.frame ? await intoFrame(edited, editedSize(photo.glance, edits), photo.frame) : edited,
      sizes,
      async (file, picture) => {
        await writeDerived(join(cache.folder, file), picture);
        cache.files.add(file);
      },
    );
  }
  const smallest = join(cache.folder, sizes[0]?.files.webp ?? '');
  return { ...original, colour: await meanColour(smallest) };
}

async function meanColour(picture: string): Promise<string> {
  const { channels } = await sharp(picture).stats();
  return `#${channels
    .slice(0, 3)
    .map(({ mean }) => Math.round(mean).toString(16).padStart(2, '0'))
    .join('')}`;
}

/** A photo as it is published, once its original is known. */
export function published(
  { record, glance, frame }: SeenPhoto,
  original: KnownOriginal,
): PublishedPhoto {
  return {
    sizes: sizesOf(frame ?? editedSize(glance, record ?? {}), stemOf(original)),
    colour: original.colour,
    taken: record?.taken ?? glance.taken,
    sha256: original.sha256,
  };
}

/** Names of all files of some sizes. */
export const filesOf = (sizes: PublishedPhoto['sizes']): string[] =>
  sizes.flatMap(({ files }) => FORMATS.map((format) => files[format]));
