import { join, relative } from 'node:path';
import type { Browser } from 'playwright-core';
import { openBook } from '../book/open.ts';
import type { Project } from '../book/types.ts';
import { wholeNumbers } from '../dossier/identity.ts';
import { sectionsOf } from '../dossier/sections.ts';
import { steadyPdf } from '../dossier/steady-pdf.ts';
import { addressesOf } from '../publish/address.ts';
import { contentDir, contentDirProblem, siteDir } from '../site/folders.ts';
import { aloneInWork } from '../site/work-lock.ts';
import { writeWhole } from '../write/swap-in.ts';
import { buildSite } from './build.ts';
import { type DossierArguments, HELP, readDossierArguments } from './dossier-arguments.ts';
import { noProject } from './no-project.ts';
import { printPage } from './print-page.ts';
import { plural } from './print-problems.ts';
import { say } from './say.ts';

const NO_BROWSER =
  'There is no browser to print with. On Linux "npm ci" brings one along; elsewhere install Chrome. The page itself prints from any browser.';

/** Prints the dossier of each project as a PDF. */
export async function main(
  args: readonly string[],
  openBrowser: () => Promise<Browser | undefined> = anyBrowser,
): Promise<number> {
  const wanted = readDossierArguments(args);
  if (wanted === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);

  const { projects } = await openBook(contentDir, { now: new Date() });
  const ids = projects.map(({ id }) => id);
  const unknown = wanted.projects.find((id) => !ids.includes(id));
  if (unknown !== undefined) return say(noProject(unknown, ids), 2);

  const browser = await openBrowser();
  if (browser === undefined) return say(NO_BROWSER, 1);
  try {
    const done = await aloneInWork('dossier', () => printAll(browser, wanted));
    return typeof done === 'number' ? done : say(`${done.busy}\nNothing was printed.`, 1);
  } catch (error) {
    return say(`Printing broke: ${(error as Error).message}`, 1);
  } finally {
    await browser.close();
  }
}

async function printAll(browser: Browser, wanted: DossierArguments): Promise<number> {
  if (!wanted.built && (await buildSite()) === undefined) return 1;
  const book = await openBook(contentDir, { now: new Date() });
  if (book.site === undefined) return 1;
  const { address } = book.site;
  const chosen = book.projects.filter(
    ({ id }) => wanted.projects.length === 0 || wanted.projects.includes(id),
  );
  for (const project of chosen) await print(browser, { project, address }, wanted);
  return 0;
}

interface Printed {
  readonly project: Project;
  readonly address: string;
}

async function print(
  browser: Browser,
  { project, address }: Printed,
  { out, paper, whole }: DossierArguments,
): Promise<void> {
  const to = addressesOf(address);
  const pdf = await printPage(browser, {
    ...{ folder: siteDir, address, paper, url: to.absolute(to.dossier(project)) },
    numbers: whole ? wholeNumbers(project) : undefined,
  });
  const file = join(out, `${project.id}${whole ? '-private' : ''}.pdf`);
  await writeWhole(file, steadyPdf(pdf, project.lastDay), { writer: process.pid });
  const sections = plural(sectionsOf(project.now).length, 'section');
  console.log(`Printed ${relative(process.cwd(), file)}: ${sections}.`);
}

/** The browser of the test set-up, else an installed Chrome; undefined where there is neither, or where they were not installed. */
async function anyBrowser(): Promise<Browser | undefined> {
  try {
    const { openBrowser } = await import('./open-browser.ts');
    const { chromium } = await import('playwright-core');
    return await openBrowser().catch(() => chromium.launch({ channel: 'chrome' }));
  } catch {
    return undefined;
  }
}
