import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { attribute, type Page, readPages, select } from '../site/pages.ts';
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

/** Bytes of a page's text, styles and scripts; photos and typefaces are not among them. */
function bytesOf({ file, root }: Page) {
  const read = (path: string) => readFileSync(join(demo.folder, path));
  const linked = (name: string, where: string) =>
    select(root, name).flatMap((element) => {
      const isSheet = name !== 'link' || attribute(element, 'rel') === 'stylesheet';
      const path = attribute(element, where);
      return path && isSheet ? [read(new URL(path, demo.address).pathname)] : [];
    });
  const scripts = linked('script', 'src');
  const all = [read(file), ...linked('link', 'href'), ...scripts];
  const sum = (parts: readonly Buffer[]) => parts.reduce((total, one) => total + one.length, 0);
  return {
    html: read(file).length,
    sent: sum(all.map((one) => gzipSync(one))),
    script: sum(scripts),
  };
}

describe('weight', () => {
  const entries = readPages(demo).filter(({ file }) => /\/log\/.+\/index\.html$/.test(file));

  test('an entry has at most 60 kB of HTML, and as much less with styles and scripts as a host sends it', () => {
    expect(entries.length).toBeGreaterThan(30);
    const heavy = entries
      .map((page) => ({ file: page.file, ...bytesOf(page) }))
      .filter(({ html, sent }) => html > 60_000 || sent > 30_000);
    expect(heavy).toEqual([]);
  });

  test('no page has more than 10 kB of script, those for searching and for checking marks apart', () => {
    for (const page of readPages(demo))
      if (!/(^|\/)(search|marks)\/index\.html$/.test(page.file))
        expect(bytesOf(page).script, page.file).toBeLessThanOrEqual(10_000);
  });
});

/** How far a page's content moved while it was loading (Layout Instability, WICG), with typefaces that come late. */
async function shiftOf(path: string, width: number, plant = ''): Promise<number> {
  const context = await browser?.newContext({ viewport: { width, height: 800 } });
  const page = await context?.newPage();
  if (page === undefined) throw new Error('there is no browser');
  await page.route(/\.woff2$/, async (route) => {
    await new Promise((late) => setTimeout(late, 400));
    await route.continue();
  });
  await page.route('**/late.png', async (route) => {
    await new Promise((late) => setTimeout(late, 400));
    await route.fulfill({ path: join(demo.folder, 'cards/lapwing.png') });
  });
  if (plant !== '')
    await page.route(`${site.address}${path}`, async (route) => {
      const answer = await route.fetch();
      await route.fulfill({
        body: (await answer.text()).replace('<main id="content">', `<main id="content">${plant}`),
      });
    });
  await page.addInitScript(() => {
    Object.assign(window, { shift: 0 });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        (window as unknown as { shift: number }).shift += (
          entry as unknown as { value: number }
        ).value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(site.address + path, { waitUntil: 'load' });
  await page.evaluate(() => document.fonts.ready);
  await page.evaluate(() => new Promise((done) => setTimeout(done, 600)));
  const shift = await page.evaluate(() => (window as unknown as { shift: number }).shift);
  await context?.close();
  return shift;
}

describe('while a page loads', () => {
  const some = kinds.filter((kind) => /(log\/.|specs\/.|costs\/$|photos\/|^$)/.test(kind));

  test.for(some.flatMap((kind) => [360, 1280].map((width) => [kind, width] as const)))(
    'nothing of /%s moves at %i px, however late its typefaces come',
    async ([kind, width], { skip }) => {
      skip(noBrowser !== undefined, noBrowser);
      expect(await shiftOf(kind, width)).toBe(0);
    },
  );

  test('what moves is noticed: a picture without a size that comes late', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    expect(await shiftOf('method/', 360, '<img src="/late.png" alt="">')).toBeGreaterThan(0);
  });
});
