import type { APIContext } from 'astro';
import { projectCard } from '../../card/project-card.ts';
import { found } from '../../site/found.ts';
import { siteNow } from '../../site/now.ts';
import { projectPaths } from '../../site/paths.ts';
import { respondWithCard } from '../../site/respond-with-card.ts';

export const getStaticPaths = projectPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, site, language } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  const owner = project.info.builder ?? site.builder;
  return respondWithCard(projectCard(project, { owner, language }));
}
