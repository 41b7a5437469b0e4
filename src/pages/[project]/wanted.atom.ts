import type { APIContext } from 'astro';
import { wantedFeed } from '../../publish/wanted-feed.ts';
import { found } from '../../site/found.ts';
import { siteNow } from '../../site/now.ts';
import { projectPaths } from '../../site/paths.ts';

export const getStaticPaths = projectPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, site, to } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  return new Response(wantedFeed(project, site, to), {
    headers: { 'Content-Type': 'application/atom+xml; charset=utf-8' },
  });
}
