import { join } from 'node:path';
import type { APIContext } from 'astro';
import { makeCard } from '../../../card/make-card.ts';
import { specCard } from '../../../card/spec-card.ts';
import { workDir } from '../../../site/folders.ts';
import { found } from '../../../site/found.ts';
import { siteNow } from '../../../site/now.ts';
import { specPaths } from '../../../site/paths.ts';

export const getStaticPaths = specPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { book, site, language } = await siteNow();
  const project = found(book.project(params.project ?? ''), 'project');
  const figures = found(project.now.spec(params.spec ?? ''), 'spec');
  const owner = project.info.builder ?? site.builder;
  const png = await makeCard(
    specCard(figures, project, { owner, language }),
    join(workDir, 'cards'),
  );
  return new Response(png as Uint8Array<ArrayBuffer>, { headers: { 'Content-Type': 'image/png' } });
}
