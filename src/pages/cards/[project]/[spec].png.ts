import type { APIContext } from 'astro';
import { specCard } from '../../../card/spec-card.ts';
import { found } from '../../../site/found.ts';
import { siteNow } from '../../../site/now.ts';
import { specPaths } from '../../../site/paths.ts';
import { respondWithCard } from '../../../site/respond-with-card.ts';

export const getStaticPaths = specPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, site, language } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  const figures = found(project.now.spec(params.spec ?? ''), 'spec');
  const owner = project.info.builder ?? site.builder;
  return respondWithCard(specCard(figures, project, { owner, language }));
}
