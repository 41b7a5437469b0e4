import { join } from 'node:path';
import type { APIContext } from 'astro';
import { entryCard, firstPhotoOf } from '../../../../card/entry-card.ts';
import { workDir } from '../../../../site/folders.ts';
import { found } from '../../../../site/found.ts';
import { siteNow } from '../../../../site/now.ts';
import { entryPaths } from '../../../../site/paths.ts';
import { respondWithCard } from '../../../../site/respond-with-card.ts';

export const getStaticPaths = entryPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, site, language, photos } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  const entry = found(
    project.entries.find(({ slug }) => slug === params.entry),
    'entry',
  );
  const sizes = photos[`${project.id}/${firstPhotoOf(entry)}`]?.sizes ?? [];
  // A published size, so that what is hidden on the site is hidden on the card.
  const file = (sizes[1] ?? sizes[0])?.files.webp;
  const photo = file && join(workDir, 'public', 'photos', file);
  const owner = project.info.builder ?? site.builder;
  return respondWithCard(entryCard(entry, project, { owner, language, photo }));
}
