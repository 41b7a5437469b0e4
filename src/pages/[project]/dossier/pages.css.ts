import type { APIRoute } from 'astro';
import { runningHeads } from '../../../dossier/running-heads.ts';
import { found } from '../../../site/found.ts';
import { siteNow } from '../../../site/now.ts';
import { projectPaths } from '../../../site/paths.ts';

export const getStaticPaths = projectPaths;

export const GET: APIRoute = async ({ params }) => {
  const { book, to, language } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  return new Response(runningHeads(project, to, language), {
    headers: { 'Content-Type': 'text/css' },
  });
};
