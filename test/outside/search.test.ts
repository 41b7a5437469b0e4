import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { filesOf } from '../site/pages.ts';
import { PLANTED } from '../site/plant.ts';
import { openBrowser, serve } from './browser.ts';

const demo = inject('site');
const browser = await openBrowser();
const site = await serve(demo.folder);
const { browser: noBrowser } = inject('missing');
afterAll(async () => {
  await browser?.close();
  site.close();
});

async function onPage(javaScriptEnabled: boolean, use: (page: Page) => Promise<void>) {
  const context = await browser?.newContext({
    javaScriptEnabled,
    viewport: { width: 360, height: 780 },
  });
  if (context === undefined) throw new Error('there is no browser');
  const page = await context.newPage();
  await use(page);
  await context.close();
}

/** Addresses of what a search finds, the best first, and what is said of it. */
async function search(query: string): Promise<{ found: string[]; said: string }> {
  let answer = { found: [] as string[], said: '' };
  await onPage(true, async (page) => {
    await page.goto(`${site.address}search/`);
    await page.getByRole('searchbox').fill(query);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      /found|loaded/.test(document.querySelector('[role=status]')?.textContent ?? ''),
    );
    expect(new URL(page.url()).searchParams.get('q')).toBe(query);
    const links = await page.locator('.found li > a').all();
    const found = await Promise.all(
      links.map(async (link) => (await link.getAttribute('href')) ?? ''),
    );
    answer = { found, said: (await page.getByRole('status').textContent()) ?? '' };
  });
  return answer;
}

describe('the search', () => {
  test.for([
    ['words and a figure', 'front axle 690 kg', '/lapwing/'],
    ['a part', 'sill left', '/lapwing/parts/'],
    ['a date as it is written', '3 August 2025', '/lapwing/log/2025-08-03-four-scales/'],
    ['the id of a row', 'c-014', '/lapwing/'],
  ] as const)('finds %s', async ([, query, expected], { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const { found } = await search(query);
    expect(found.slice(0, 8).some((address) => address.startsWith(expected))).toBe(true);
  });

  test('says so when there is nothing', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const { found, said } = await search('qqqq');
    expect(found).toEqual([]);
    expect(said).toBe('Nothing found for “qqqq”.');
  });

  test('takes what is asked for from the address', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(true, async (page) => {
      await page.goto(`${site.address}search/?q=weighing`);
      await page.locator('.found li').first().waitFor();
      expect(await page.getByRole('searchbox').inputValue()).toBe('weighing');
    });
  });

  test('says without JavaScript that it needs it, and where the indexes are', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(false, async (page) => {
      await page.goto(`${site.address}search/`);
      expect(await page.locator('main').textContent()).toContain('needs JavaScript');
      expect(await page.locator('main a').first().getAttribute('href')).toBe('/lapwing/index/');
    });
  });

  test('holds no secret: what it keeps packed is looked through unpacked', () => {
    const packed = filesOf(demo.folder).filter(
      (file) => /(^|\/)find\//.test(file) && /\.pf_/.test(file),
    );
    expect(packed.length).toBeGreaterThan(300);
    for (const file of packed) {
      const text = gunzipSync(readFileSync(join(demo.folder, file))).toString();
      expect(text.match(PLANTED), file).toBeNull();
    }
  });
});

describe('what is new since the last visit', () => {
  test('is kept on the device when asked for, marked, and forgotten', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(true, async (page) => {
      const kept = () => page.evaluate(() => localStorage.length);
      await page.goto(`${site.address}lapwing/log/`);
      expect(await kept()).toBe(0);
      await page.getByRole('button', { name: 'Remember on this device' }).click();
      expect(await kept()).toBe(1);
      expect(await page.locator('since-visit').textContent()).toContain('Nothing new since');
      // As if the two newest entries had come after the visit.
      await page.evaluate(() => {
        const [key = ''] = Object.keys(localStorage);
        const value = JSON.parse(localStorage.getItem(key) ?? '');
        localStorage.setItem(key, JSON.stringify({ ...value, seen: value.seen.slice(0, -2) }));
      });
      await page.reload();
      expect(await page.locator('since-visit').textContent()).toContain('2 new since');
      expect(await page.locator('.new-here').count()).toBe(2);
      await page.getByRole('button', { name: 'All seen' }).click();
      expect(await page.locator('.new-here').count()).toBe(0);
      await page.getByRole('button', { name: 'Forget' }).click();
      expect(await kept()).toBe(0);
    });
  });
});
