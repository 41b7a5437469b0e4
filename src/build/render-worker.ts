// A process of its own that makes the pages of some projects in a scratch folder; the build starts it and says of which.
import { type EntryTexts, entryTexts } from './entry-texts.ts';
import { runAstro } from './run-astro.ts';

/** What was made: the folder that the pages are in, and the texts of their entries. */
export interface Made {
  readonly site: string;
  readonly texts: EntryTexts;
}

/** What the build is told at the end. */
export type Rendered = Made | { readonly failure: string };

const [scratch = '', ...projects] = process.argv.slice(2);
const rendered = await render();
// The way to the build is closed once all has gone through it.
process.send?.(rendered, () => process.disconnect());

async function render(): Promise<Rendered> {
  try {
    const site = await runAstro(projects, scratch);
    return { site, texts: await entryTexts(site, projects) };
  } catch (error) {
    return { failure: (error as Error).message };
  }
}
