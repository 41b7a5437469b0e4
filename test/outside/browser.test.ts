import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { attribute, readPages, select } from '../site/pages.ts';
import { openBrowser, serve } from './browser.ts';
import { pageKinds } from './page-kinds.ts';

const demo = inject('site');
const kinds = await pageKinds();
const browser = await openBrowser();
const site = await serve(demo.folder);
const { browser: noBrowser } = inject('missing');
afterAll(async () => {
  await browser?.close();
  site.close();
});

/** All but those that lead on, which are gone before they can be looked at. */
const everyPage = readPages(demo).flatMap(({ file, root }) =>
  select(root, 'meta').some((meta) => attribute(meta, 'http-equiv') === 'refresh') ? [] : [file],
);

type Options = { readonly width?: number; readonly javaScriptEnabled?: boolean };

/** Uses a page of its own, and gives what it wrote to the console, with what it could not load. */
async function onPage(
  { width = 1280, javaScriptEnabled = true }: Options,
  use: (page: Page) => Promise<void>,
): Promise<string[]> {
  const context = await browser?.newContext({
    viewport: { width, height: 900 },
    javaScriptEnabled,
  });
  if (context === undefined) throw new Error('there is no browser');
  const page = await context.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  page.on('requestfailed', (request) => said.push(`failed: ${request.url()}`));
  page.on('response', (response) => {
    if (response.status() >= 400) said.push(`${response.status()}: ${response.url()}`);
  });
  await use(page);
  await context.close();
  return said;
}

const isTooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);

const unfold = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });

describe('on a small screen', () => {
  test.for([320, 360])(
    'no page of %i px scrolls sideways, folded or unfolded',
    async (width, { skip }) => {
      skip(noBrowser !== undefined, noBrowser);
      const tooWide: string[] = [];
      await onPage({ width }, async (page) => {
        const paths = width === 320 ? everyPage : kinds;
        for (const path of paths) {
          await page.goto(site.address + path);
          if (await isTooWide(page)) tooWide.push(path);
          await unfold(page);
          if (await isTooWide(page)) tooWide.push(`${path}, unfolded`);
        }
      });
      expect(tooWide).toEqual([]);
    },
  );

  test('a page that is too wide is noticed', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage({ width: 320 }, async (page) => {
      await page.setContent(
        '<details><summary>More</summary><p style="width:321px">x</p></details>',
      );
      expect(await isTooWide(page)).toBe(false);
      await unfold(page);
      expect(await isTooWide(page)).toBe(true);
    });
  });
});

describe('without JavaScript', () => {
  test.for(kinds)(
    '/%s says the same to a screen reader as with it, has its pictures, and unfolds',
    async (kind, { skip }) => {
      skip(noBrowser !== undefined, noBrowser);
      const read: { words: string; pictures: number; unfolded: boolean }[] = [];
      for (const javaScriptEnabled of [true, false]) {
        await onPage({ javaScriptEnabled }, async (page) => {
          await page.goto(site.address + kind);
          const [first] = await page.locator('details > summary').all();
          await first?.click();
          // The buttons that copy are all that a script adds, besides the form that checks marks, the control of a pair and what is new.
          await page
            .locator('ledger-check, .pair .reveal, since-visit, site-search + noscript')
            .evaluateAll((forms) => {
              for (const form of forms) form.remove();
            });
          await page.locator('copy-text button').evaluateAll((buttons) => {
            for (const button of buttons) button.remove();
          });
          const pictures = page.locator('main :is(img, svg.drawing)');
          read.push({
            words: await page.locator('body').ariaSnapshot(),
            pictures: await pictures.count(),
            unfolded: first === undefined || (await page.locator('details[open]').count()) === 1,
          });
        });
      }
      expect(read[0]?.words.length).toBeGreaterThan(200);
      expect(read[1]).toEqual({ ...read[0], unfolded: true });
    },
  );
});

describe('the console', () => {
  test.for(kinds)('stays empty on /%s, and everything is loaded', async (kind, { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const said = await onPage({}, async (page) => {
      await page.goto(site.address + kind);
      await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
      await page.waitForLoadState('networkidle');
    });
    expect(said).toEqual([]);
  });

  test('is heard: a file that is missing, and a script that fails', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const said = await onPage({}, async (page) => {
      await page.setContent(`<img src="${site.address}gone.webp"><script>nothing()</script>`, {
        waitUntil: 'load',
      });
    });
    expect(said).toContain(`404: ${site.address}gone.webp`);
    expect(said).toContain('nothing is not defined');
  });
});
