import { literalProp } from '../book/literal-prop.ts';
import type { Entry, Project } from '../book/types.ts';

/** A photo as an entry shows it. */
export interface ShownPhoto {
  readonly entry: Entry;
  readonly file: string;
  readonly alt: string;
  readonly caption: string;
}

/** The photos that the project lets into its dossier: none, the first of each entry, or all, each once. */
export function shownPhotos(project: Project): readonly ShownPhoto[] {
  const wanted = project.info.dossier.photos;
  if (wanted === 'none') return [];
  const photos = project.entries.flatMap((entry) => {
    const own = photosOf(entry);
    return wanted === 'all' ? own : own.slice(0, 1);
  });
  const first = new Map([...photos].reverse().map((photo) => [photo.file, photo]));
  return photos.filter((photo) => first.get(photo.file) === photo);
}

function photosOf(entry: Entry): ShownPhoto[] {
  return entry.components
    .filter(({ name }) => name === 'Photo')
    .map((used) => ({
      entry,
      file: literalProp(used, 'file'),
      alt: literalProp(used, 'alt'),
      caption: literalProp(used, 'caption'),
    }));
}
