import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page, Route } from 'playwright-core';
import { pagesOfNames } from '../dossier/pdf-pages.ts';

/** A page of a built site to print. */
export interface PrintJob {
  /** Folder of the built site, and the address it is published at. */
  readonly folder: string;
  readonly address: string;
  /** Address of the page. */
  readonly url: string;
  readonly paper: 'A4' | 'Letter';
  /** Whole identity numbers for a private copy, in the order of the page; undefined for what the page says. */
  readonly numbers: readonly (string | undefined)[] | undefined;
}

/** Prints the dossier page of a site under its public address, so that its links lead there; nothing is fetched from anywhere but the folder. */
export async function printPage(browser: Browser, job: PrintJob): Promise<Uint8Array> {
  const context = await browser.newContext({ colorScheme: 'light' });
  try {
    const page = await context.newPage();
    await page.route('**/*', (route) => answer(route, job));
    const response = await page.goto(job.url);
    if (!response?.ok())
      throw new Error(`the built site has no page ${job.url}; leave out --built`);
    await page.emulateMedia({ media: 'print' });
    await showPictures(page);
    if (job.numbers) await page.evaluate(writeNumbers, [...job.numbers]);
    return await printNumbered(page, job.paper);
  } finally {
    await context.close();
  }
}

async function answer(route: Route, { folder, address }: PrintJob): Promise<void> {
  const url = new URL(route.request().url());
  const site = new URL(address);
  if (url.origin !== site.origin || !url.pathname.startsWith(site.pathname)) return route.abort();
  const below = decodeURIComponent(url.pathname.slice(site.pathname.length));
  const path = join(folder, below === '' || below.endsWith('/') ? `${below}index.html` : below);
  const body = await readFile(path).catch(() => undefined);
  return body ? route.fulfill({ path }) : route.fulfill({ status: 404, body: 'not found' });
}

/** Pictures that wait to be scrolled to would be blank on paper. */
async function showPictures(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const pictures = [...document.images];
    for (const picture of pictures) picture.loading = 'eager';
    await Promise.all([...pictures.map((picture) => picture.decode()), document.fonts.ready]);
  });
}

// Runs in the page: the whole numbers are in no file of the site.
function writeNumbers(numbers: readonly (string | undefined)[]): void {
  for (const cell of document.querySelectorAll<HTMLElement>('[data-number]')) {
    const whole = numbers[Number(cell.dataset.number)];
    if (whole !== undefined) cell.textContent = whole;
  }
  for (const note of document.querySelectorAll('.masked')) note.remove();
  for (const note of document.querySelectorAll<HTMLElement>('.private-copy')) note.hidden = false;
}

// Runs in the page.
function writePages(pages: readonly (readonly [name: string, page: number])[]): void {
  const known = new Map(pages);
  for (const place of document.querySelectorAll<HTMLElement>('[data-page-of]'))
    place.textContent = String(known.get(place.dataset.pageOf ?? '') ?? '');
}

/** The numbers in the contents can move what they count, so it prints until they stand still: twice, as they have room. */
async function printNumbered(page: Page, format: PrintJob['paper']): Promise<Uint8Array> {
  const print = () => page.pdf({ format, outline: true, tagged: true, printBackground: true });
  let pdf = await print();
  for (let pass = 0; pass < 4; pass++) {
    const pages = [...pagesOfNames(pdf)];
    await page.evaluate(writePages, pages);
    pdf = await print();
    if (JSON.stringify(pages) === JSON.stringify([...pagesOfNames(pdf)])) return pdf;
  }
  throw new Error('this is our bug: the page numbers of the contents do not settle');
}
