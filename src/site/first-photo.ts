import type { Entry } from '../book/types.ts';
import { photosOf } from '../photo/shown.ts';

/** Whether a photo is among the first that an entry shows, which the reader may see at once; the others can wait. */
export function isFirstPhoto(entry: Entry | undefined, file: string): boolean {
  const first = entry?.components.find((component) => photosOf(component).length > 0);
  return first !== undefined && photosOf(first).includes(file);
}
