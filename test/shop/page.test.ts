import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeCode } from '../../src/shop/pairing.ts';
import { lookAt } from '../outside/axe.ts';
import { openBrowser } from '../outside/browser.ts';
import { inShop, type Served } from './shop.ts';

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

/** A paired phone, at the first view. */
async function pairedPhone(
  served: Served,
  options: { readonly colorScheme?: 'light' | 'dark' } = {},
): Promise<{ context: BrowserContext; page: Page }> {
  if (!browser) throw new Error('there is no browser to look with');
  const context = await browser.newContext({ ...PHONE, ...options });
  const page = await context.newPage();
  const code = await makeCode(served.state, new Date());
  await page.goto(`${served.shop.address}#pair=${code}`);
  await page.getByRole('button', { name: 'Pair' }).click();
  await page.getByRole('button', { name: 'Hours' }).waitFor();
  return { context, page };
}

const hoursOf = ({ content }: Served) => readFile(join(content, 'press/ledger/hours.csv'), 'utf8');

async function enterHours(page: Page, what: string): Promise<void> {
  await page.getByRole('button', { name: 'Hours' }).click();
  await page.getByLabel('Hours and minutes').fill('1:15');
  await page.getByLabel('Phase').selectOption('rebuild');
  await page.getByLabel('Kind of work').selectOption('fit');
  await page.getByLabel('What').fill(what);
  await page.getByRole('button', { name: 'Save on this phone' }).click();
}

const count = (page: Page, name: 'kept' | 'sent', value: string) =>
  page.locator(`#count-${name}`, { hasText: new RegExp(`^${value}$`) }).waitFor();

describe('the bench page in a browser', () => {
  it('keeps what is entered without the workshop, over a closed tab, and sends it once', () =>
    inShop(async (served) => {
      const { context, page } = await pairedPhone(served);
      await page.evaluate(() => navigator.serviceWorker.ready);
      await context.setOffline(true);
      await enterHours(page, 'Entered offline');
      await count(page, 'kept', '1');
      await page.close();
      const again = await context.newPage();
      await again.goto(served.shop.address);
      await count(again, 'kept', '1');
      await enterHours(again, 'Entered after');
      await count(again, 'kept', '2');
      expect(await hoursOf(served)).not.toContain('Entered');
      await context.setOffline(false);
      await count(again, 'kept', '0');
      await count(again, 'sent', '2');
      const rows = (await hoursOf(served)).trimEnd().split('\n').slice(3);
      expect(rows.map((row) => row.split(',').at(-1))).toEqual([
        'Entered offline',
        'Entered after',
      ]);
      await again.getByRole('button', { name: 'Show what was entered' }).click();
      const list = await again.locator('.kept').textContent();
      expect(list).toContain('press/ledger/hours.csv:4 (h-003)');
      await context.close();
    }));

  it('keeps the timer over a closed tab, and asks for the real end of one that was forgotten', () =>
    inShop(async (served) => {
      const { context, page } = await pairedPhone(served);
      await page.clock.install({ time: new Date('2025-06-02T08:00:00') });
      await page.getByRole('button', { name: 'Start: Rebuild' }).click();
      await page.getByRole('timer').waitFor();
      await page.close();
      const later = await context.newPage();
      await later.clock.install({ time: new Date('2025-06-02T09:30:10') });
      await later.goto(served.shop.address);
      expect(await later.getByRole('timer').textContent()).toMatch(/^1:30:1\d$/);
      await later.close();
      const next = await context.newPage();
      await next.clock.install({ time: new Date('2025-06-03T08:00:00') });
      await next.goto(served.shop.address);
      await next.getByLabel('Real end').fill('2025-06-02T07:00');
      await next.getByRole('button', { name: 'Use this end' }).click();
      await next.getByText('The end must lie after the start').waitFor();
      await next.getByLabel('Real end').fill('2025-06-02T10:45');
      await next.getByRole('button', { name: 'Use this end' }).click();
      expect(await next.getByLabel('Hours and minutes').inputValue()).toBe('2:45');
      await next.getByLabel('Kind of work').selectOption('fit');
      await next.getByLabel('What').fill('Fitted the gib');
      await next.getByRole('button', { name: 'Save on this phone' }).click();
      await count(next, 'sent', '1');
      expect(await hoursOf(served)).toContain('2025-06-02,2:45,rebuild,fit,,Fitted the gib');
      expect(await next.getByRole('timer').count()).toBe(0);
      await context.close();
    }));

  it('takes a reading by its keypad, with the unit and the instrument of last time', () =>
    inShop(async (served) => {
      const { context, page } = await pairedPhone(served);
      await page.getByRole('button', { name: 'Reading' }).click();
      await page.getByLabel('Spec').selectOption('ram-play');
      for (const key of [
        '0',
        'Decimal point',
        '0',
        '9',
        'Next value',
        '0',
        'Decimal point',
        '1',
        '1',
      ])
        await page.getByRole('button', { name: key, exact: true }).click();
      expect(await page.locator('.shown').textContent()).toBe('0.090.11mm');
      expect(await page.getByLabel('Instrument').inputValue()).toBe('dial-indicator');
      await page.getByLabel('after').check({ force: true });
      await page.getByRole('button', { name: 'Save on this phone' }).click();
      await count(page, 'sent', '1');
      const readings = await readFile(join(served.content, 'press/ledger/readings.csv'), 'utf8');
      expect(readings).toMatch(
        /^r-003,ram-play,\d{4}-\d\d-\d\d,after,0\.09 0\.11,mm,dial-indicator$/m,
      );
      await context.close();
    }));

  it('shows why a row was refused, and takes it once it is mended on the phone', () =>
    inShop(async (served) => {
      const { context, page } = await pairedPhone(served);
      await page.getByRole('button', { name: 'Cost' }).click();
      await page.getByLabel('Amount in GBP').fill('12,50 or so');
      await page.getByLabel('What').fill('Paraffin');
      await page.getByLabel('Category').selectOption('consumable');
      await page.getByRole('button', { name: 'Save on this phone' }).click();
      await page.locator('#count-refused').waitFor();
      await page.getByRole('button', { name: 'Show what was entered' }).click();
      await page.getByText('"12,50 or so" is not an amount').waitFor();
      await page.getByRole('button', { name: 'Mend' }).click();
      await page.getByLabel('Amount in GBP').fill('12,50');
      await page.getByRole('button', { name: 'Save on this phone' }).click();
      await count(page, 'sent', '1');
      const costs = await readFile(join(served.content, 'press/ledger/costs.csv'), 'utf8');
      expect(costs).toMatch(/12\.50,consumable,.*Paraffin/);
      await context.close();
    }));

  it.each(['light', 'dark'] as const)(
    'has nothing that axe objects to, %s, and nothing small to tap',
    (colorScheme) =>
      inShop(async (served) => {
        const { context, page } = await pairedPhone(served, { colorScheme });
        for (const view of [
          '',
          'Hours',
          'Cost',
          'Reading',
          'Finding',
          'Part',
          'Show what was entered',
        ]) {
          if (view !== '') await page.getByRole('button', { name: view, exact: true }).click();
          await page.locator('#view > *').waitFor();
          const { violations } = await lookAt(page);
          expect([view, violations]).toEqual([view, []]);
          const small = await page.evaluate(() =>
            [
              ...document.querySelectorAll(
                'button, select, input:not([type=radio]), textarea, summary, .few label',
              ),
            ]
              .filter((element) => {
                const { width, height } = element.getBoundingClientRect();
                return width < 48 || height < 48;
              })
              .map(({ outerHTML }) => outerHTML),
          );
          expect([view, small]).toEqual([view, []]);
          const width = await page.evaluate(() => document.documentElement.scrollWidth);
          expect([view, width]).toEqual([view, 360]);
          if (view !== '') await page.getByRole('button', { name: 'Back' }).click();
        }
        await context.close();
      }),
  );
});
