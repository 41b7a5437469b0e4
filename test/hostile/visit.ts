import type { Browser } from 'playwright-core';

/** What came of opening pages in a browser. */
export interface Visited {
  readonly pages: number;
  /** Dialogs, errors, broken rules of the policy, and requests that left the site. */
  readonly happened: readonly string[];
  /** Files that are no well-formed XML, as the browser says. */
  brokenXml(files: readonly (readonly [name: string, text: string])[]): Promise<string[]>;
  /** Looks for a word on the search page; what happened meanwhile. */
  search(word: string): Promise<string[]>;
}

/** Opens every page, unfolds all that folds, and puts focus and pointer on what an attack would wait for. */
export async function visit(
  browser: Browser,
  address: string,
  paths: readonly string[],
): Promise<Visited> {
  const context = await browser.newContext();
  const page = await context.newPage();
  let happened: string[] = [];
  let at = '';
  const note = (what: string) => happened.push(`${at}: ${what}`);
  page.on('dialog', (dialog) => {
    note(`dialog ${dialog.message()}`);
    dialog.dismiss().catch(() => undefined);
  });
  page.on('console', (message) => note(message.text()));
  page.on('pageerror', (error) => note(error.message));
  page.on('popup', () => note('popup'));
  await context.route('**/*', async (route) => {
    if (route.request().url().startsWith(address)) return route.continue();
    note(`asked for ${route.request().url()}`);
    return route.abort();
  });

  let pages = 0;
  for (const path of paths) {
    at = path;
    await page.goto(address + path);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
      for (const element of document.querySelectorAll('main *')) {
        element.dispatchEvent(new MouseEvent('mouseover', { bubbles: true }));
        element.dispatchEvent(new Event('focus'));
      }
      window.scrollTo(0, document.body.scrollHeight);
    });
    pages++;
  }

  return {
    pages,
    happened,
    brokenXml: (files) =>
      page.evaluate(
        (all) =>
          all.flatMap(([name, text]) => {
            const error = new DOMParser()
              .parseFromString(text ?? '', 'application/xml')
              .querySelector('parsererror');
            return error ? [`${name}: ${error.textContent}`] : [];
          }),
        files.map(([name, text]) => [name, text]),
      ),
    async search(word) {
      happened = [];
      at = 'search/';
      await page.goto(`${address}search/?q=${word}`);
      await page.locator('main input[type=search]').fill(word);
      await page.waitForTimeout(1_500);
      if ((await page.locator('main mark').count()) === 0) note('nothing was found');
      return happened;
    },
  };
}
