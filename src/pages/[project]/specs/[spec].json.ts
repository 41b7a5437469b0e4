import type { APIContext } from 'astro';
import { specJson } from '../../../publish/spec-json.ts';
import { found } from '../../../site/found.ts';
import { siteNow } from '../../../site/now.ts';
import { specPaths } from '../../../site/paths.ts';

export const getStaticPaths = specPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, to } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  const figures = found(project.now.spec(params.spec ?? ''), 'spec');
  return new Response(`${JSON.stringify(specJson(figures, project, to), null, 2)}\n`, {
    headers: { 'Content-Type': 'application/json; charset=utf-8' },
  });
}
