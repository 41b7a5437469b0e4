import { afterAll, describe, expect, inject, test } from 'vitest';
import { qrText } from '../../src/draw/qr-text.ts';
import { openBrowser, serve } from './browser.ts';

const demo = inject('site');
const browser = await openBrowser();
const site = await serve(demo.folder);
const { browser: noBrowser } = inject('missing');
const context = await browser?.newContext({ viewport: { width: 360, height: 780 } });
afterAll(async () => {
  await browser?.close();
  site.close();
});

async function open(path: string) {
  const page = await context?.newPage();
  if (page === undefined) throw new Error('there is no browser');
  await page.goto(new URL(path, site.address).href);
  return page;
}

describe.skipIf(noBrowser)('what an address points at', () => {
  test.each([
    ['a cost', 'lapwing/costs/2025/', 'c-021'],
    ['a correction', 'lapwing/corrections/', 'c-040'],
    ['a reading', 'lapwing/specs/axle-backlash/', ''],
    ['a phase', 'lapwing/hours/', 'phase-strip'],
  ])('%s can be copied, cited and shown as a QR code', async (_, path, wanted) => {
    const page = await open(path);
    expect(await page.locator('pointed-at section').count()).toBe(0);
    const ids = await page
      .locator('main :is(tr, li, details, section, div)[id]')
      .evaluateAll((all) => all.map(({ id }) => id));
    const id = ids.includes(wanted) ? wanted : (ids[0] ?? '');
    await page.goto(`${new URL(path, site.address).href}#${id}`);
    const strip = page.getByRole('region', { name: 'What the address points at' });
    await strip.waitFor();
    expect(await strip.locator('b').textContent()).toBe(id);
    await strip.getByRole('button', { name: 'QR code' }).click();
    const drawn = await strip.locator('svg path').getAttribute('d');
    expect(qrText(`${demo.address}${path}#${id}`)).toContain(`d="${drawn}"`);
    await strip.getByRole('button', { name: 'Copy citation' }).click();
    // A test's browser lets nobody at its clipboard without being asked: the text stands there instead, or it is copied.
    await expect.poll(() => strip.textContent()).toMatch(/Copied|https:\/\//);
    const [row, foot] = await Promise.all([
      page.locator(`[id="${id}"]`).boundingBox(),
      strip.boundingBox(),
    ]);
    expect(row && foot && row.y < foot.y).toBe(true);
    await strip.getByRole('button', { name: 'Close' }).click();
    expect(await strip.count()).toBe(0);
    await page.close();
  });

  test('nothing shows where the address points at no row', async () => {
    const page = await open('lapwing/costs/#content');
    expect(await page.locator('pointed-at section').count()).toBe(0);
    await page.close();
  });
});
