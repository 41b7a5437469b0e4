import type { APIContext } from 'astro';
import type { Project } from '../book/types.ts';
import { found } from './found.ts';
import { siteNow } from './now.ts';
import { markedPaths } from './paths.ts';

/** A file beside the page of marks, for every project that has a mark: its paths and what it holds. */
export function markFile(type: string, textOf: (project: Project) => string) {
  return {
    getStaticPaths: markedPaths,
    GET: async ({ params }: APIContext): Promise<Response> => {
      const { book } = await siteNow();
      const project = found(book.project(params.project ?? ''), 'project');
      const headers = { 'Content-Type': `${type}; charset=utf-8` };
      return new Response(textOf(project), { headers });
    },
  };
}
