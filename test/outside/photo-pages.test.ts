import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { openBrowser, serve } from './browser.ts';

const browser = await openBrowser();
const site = await serve(inject('site').folder);
const { browser: noBrowser } = inject('missing');
afterAll(async () => {
  await browser?.close();
  site.close();
});

const PAIR = 'lapwing/log/2026-05-24-two-greens/';
const CALLED_OUT = 'lapwing/photos/three-quarter-open/';

/** Uses a page of its own that notes every shift of its layout that no key or pointer asked for. */
async function onPage(
  path: string,
  { width = 1280, javaScriptEnabled = true },
  use: (page: Page) => Promise<void>,
): Promise<void> {
  const context = await browser?.newContext({
    viewport: { width, height: 900 },
    javaScriptEnabled,
  });
  if (context === undefined) throw new Error('there is no browser');
  const page = await context.newPage();
  // Letters that arrive late move text on every page alike; here pictures and controls are looked at.
  await page.route(/\.woff2?$/, (route) => route.abort());
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & {
        value: number;
        hadRecentInput: boolean;
      })[])
        if (!entry.hadRecentInput) shifts.push(entry.value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(site.address + path);
  await use(page);
  await context.close();
}

const shiftsOf = async (page: Page): Promise<number[]> => {
  for (let y = 0; y < 6000; y += 600) {
    await page.mouse.wheel(0, 600);
    await page.waitForTimeout(40);
  }
  return page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
};

const clip = (page: Page) =>
  page
    .locator('figure.pair .half:last-child > a')
    .first()
    .evaluate((link) => getComputedStyle(link).clipPath);

describe('a pair of photos', () => {
  test('stands side by side from 768 pixels, and one above the other below', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    for (const [width, beside] of [
      [768, true],
      [767, false],
      [360, false],
    ] as const)
      await onPage(PAIR, { width, javaScriptEnabled: false }, async (page) => {
        const [before, after] = await Promise.all(
          [0, 1].map((index) => page.locator('figure.pair img').nth(index).boundingBox()),
        );
        expect(before?.y === after?.y, `at ${width} px`).toBe(beside);
        expect(await page.locator('.reveal button').count()).toBe(0);
      });
  });

  test('is revealed by keys alone', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(PAIR, {}, async (page) => {
      await page.locator('figure.pair a').last().focus();
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      expect(await clip(page)).toBe('inset(0px 0px 0px 50%)');
      for (let count = 0; count < 5; count++) await page.keyboard.press('ArrowRight');
      expect(await clip(page)).toBe('inset(0px 0px 0px 55%)');
      await page.keyboard.press('Home');
      expect(await clip(page)).toMatch(/^inset\(0px( 0px 0px 0%)?\)$/);
      await page.keyboard.press('End');
      expect(await clip(page)).toBe('inset(0px 0px 0px 100%)');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      expect(await clip(page)).toBe('none');
    });
  });

  test('is revealed by a click on the line, without dragging', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(PAIR, { width: 360 }, async (page) => {
      await page.locator('.reveal button').first().click();
      const box = await page.locator('.reveal input').first().boundingBox();
      if (!box) throw new Error('no range');
      await page.mouse.click(box.x + box.width * 0.25, box.y + box.height / 2);
      const edge = Number(/(\d+)%\)$/.exec(await clip(page))?.[1]);
      expect(Math.abs(edge - 25)).toBeLessThan(4);
      const isTooWide = await page.evaluate(
        () => document.documentElement.scrollWidth > window.innerWidth,
      );
      expect(isTooWide).toBe(false);
    });
  });
});

describe('pages with photos', () => {
  test.for([360, 1280])(
    'of %i px do not shift while they load and are scrolled',
    async (width, { skip }) => {
      skip(noBrowser !== undefined, noBrowser);
      for (const path of [PAIR, CALLED_OUT, 'lapwing/photos/'])
        await onPage(path, { width }, async (page) => {
          expect(await shiftsOf(page), path).toEqual([]);
        });
    },
  );

  test('of 360 px keep callouts on the photo, at their full size', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage(CALLED_OUT, { width: 360 }, async (page) => {
      const photo = await page.locator('.shot').boundingBox();
      const circles = await page.locator('.callouts circle.open').all();
      expect(circles).toHaveLength(4);
      if (!photo) throw new Error('no photo');
      for (const circle of circles) {
        const box = await circle.boundingBox();
        if (!box) throw new Error('a number is not drawn');
        expect(box.width).toBeGreaterThanOrEqual(22);
        expect(box.x).toBeGreaterThanOrEqual(photo.x);
        expect(box.x + box.width).toBeLessThanOrEqual(photo.x + photo.width);
        expect(box.y).toBeGreaterThanOrEqual(photo.y);
        expect(box.y + box.height).toBeLessThanOrEqual(photo.y + photo.height);
      }
    });
  });

  test('turn to the next photo by its link, from the keyboard', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    await onPage('lapwing/photos/bus-side-view/', {}, async (page) => {
      await page.locator('a[rel=next]').focus();
      await page.keyboard.press('Enter');
      await page.waitForURL(/four-scales-plan/);
    });
  });
});
