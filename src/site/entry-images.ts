import type { Entry, Project } from '../book/types.ts';
import { siteNow } from './now.ts';

/** Whole addresses of the photos of an entry, each in its largest size. */
export async function entryImages(project: Project, entry: Entry): Promise<readonly string[]> {
  const { photos, to } = await siteNow();
  return entry.components.flatMap(({ name, props }) => {
    const file = props.find((prop) => prop.name === 'file')?.literal;
    const largest = name === 'Photo' && file ? photos[`${project.id}/${file}`]?.sizes.at(-1) : null;
    return largest ? [to.absolute(`${to.home()}photos/${largest.files.webp}`)] : [];
  });
}
