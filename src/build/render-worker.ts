// A process of its own that makes the pages of some projects; the build says of which, and where.
import { once } from 'node:events';
import { type EntryTexts, entryTexts } from './entry-texts.ts';
import type { PageProgram } from './page-program.ts';
import { renderPages } from './render-pages.ts';

/** What the build asks for: pages of projects, made in a folder. */
export interface RenderOrder {
  readonly program: PageProgram;
  readonly projects: readonly string[];
  readonly site: string;
}

/** What the build is told at the end: the texts of entries. */
export type Rendered = { readonly texts: EntryTexts } | { readonly failure: string };

const [order] = (await once(process, 'message')) as [RenderOrder];
const rendered = await render(order);
// The way to the build is closed once all has gone through it.
process.send?.(rendered, () => process.disconnect());

async function render({ program, projects, site }: RenderOrder): Promise<Rendered> {
  // Where the build has ended, nobody waits.
  process.once('disconnect', () => process.exit());
  try {
    await renderPages(program, projects, site);
    return { texts: await entryTexts(site, projects) };
  } catch (error) {
    return { failure: (error as Error).message };
  }
}
