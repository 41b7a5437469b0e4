// A process of its own that makes the pages of some projects; the build says of which, and where.
import { answerOnce } from './own-process.ts';
import type { PageProgram } from './page-program.ts';
import { renderPages } from './render-pages.ts';

/** What the build asks for: pages of projects, made in a folder. */
export interface RenderOrder {
  readonly program: PageProgram;
  readonly projects: readonly string[];
  readonly site: string;
}

await answerOnce(async ({ program, projects, site }: RenderOrder): Promise<'made'> => {
  await renderPages(program, projects, site);
  return 'made';
});
