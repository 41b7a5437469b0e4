import type { ReadProject } from './content.ts';

/**
 * Photos that may not be derived, because what must be hidden on them is not known: the record of each has a mistake, or may be one
 * that names no file of the folder, or there are two of it. A photo that no record was meant for is not among them.
 */
export function heldPhotos({ photos, lists, lost }: ReadProject): ReadonlySet<string> {
  if (lost.kinds.has('photos')) return new Set(photos);
  const sound = lists.photos.map(({ value }) => value.file);
  const named = [...sound, ...lost.photoFiles];
  const twice = named.filter((file, index) => named.indexOf(file) !== index);
  // A record of a file that is not there may be meant for any photo that has no record of its own.
  const astray = named.some((file) => file === undefined || !photos.includes(file));
  const without = astray ? photos.filter((file) => !sound.includes(file)) : [];
  return new Set([...lost.photoFiles, ...twice, ...without].filter((file) => file !== undefined));
}
