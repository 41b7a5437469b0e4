import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { faintOf, lookAt } from './axe.ts';
import { openBrowser, serve } from './browser.ts';
import { pageKinds } from './page-kinds.ts';

const kinds = await pageKinds();
const { browser: noBrowser } = inject('missing');
const browser = await openBrowser();
const site = await serve(inject('site').folder);
afterAll(async () => {
  await browser?.close();
  site.close();
});

/** What axe can't judge by itself, and why it is in order. Contrast is worked out instead. */
const IN_ORDER: Readonly<Record<string, RegExp>> = {
  // The arrow back from a footnote has no words to be part of its name.
  'label-content-name-mismatch': /footnote-backref|user-content-fnref/,
};

async function openPage(
  { look, width }: { look: 'light' | 'dark' | 'forced'; width: number },
  from: Browser | undefined = browser,
): Promise<Page> {
  if (from === undefined) throw new Error('there is no browser');
  const context = await from.newContext({
    colorScheme: look === 'dark' ? 'dark' : 'light',
    forcedColors: look === 'forced' ? 'active' : 'none',
    viewport: { width, height: 900 },
  });
  return context.newPage();
}

describe.each([
  { look: 'light', width: 1280 },
  { look: 'dark', width: 1280 },
  { look: 'forced', width: 1280 },
  { look: 'light', width: 320 },
  { look: 'dark', width: 320 },
  { look: 'forced', width: 320 },
] as const)('axe, in $look colours, $width px wide', (view) => {
  let page: Page;
  beforeAll(async () => {
    if (browser) page = await openPage(view);
  });
  afterAll(() => page?.context().close());

  test.for(kinds)(
    'finds nothing wrong with /%s, and leaves nothing open that is',
    async (kind, { skip }) => {
      skip(noBrowser !== undefined, noBrowser);
      await page.goto(site.address + kind);
      const { violations, undecided } = await lookAt(page);
      expect(violations).toEqual([]);

      const contrast = undecided.filter(({ rule }) => rule === 'color-contrast');
      expect(
        await faintOf(
          page,
          contrast.map(({ target }) => target),
        ),
      ).toEqual([]);
      const open = undecided.filter(
        ({ rule, target }) => rule !== 'color-contrast' && !IN_ORDER[rule]?.test(target),
      );
      expect(open).toEqual([]);
    },
  );
});

describe('the look for barriers', () => {
  const html = (body: string) =>
    `<!doctype html><html lang="en"><title>Planted</title><main style="background:#fff"><h1>Planted</h1>${body}</main></html>`;

  test.for([
    ['color-contrast', '<p style="color:#bbb">faint</p>'],
    ['image-alt', '<img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=" width="9" height="9">'],
    ['label', '<input type="text">'],
    [
      'empty-table-header',
      '<table><tr><th></th><th>a</th></tr><tr><td>1</td><td>2</td></tr></table>',
    ],
    [
      'target-size',
      '<a href="/a" style="font-size:8px">a</a><br><a href="/b" style="font-size:8px">b</a>',
    ],
    ['heading-order', '<h4>too deep</h4>'],
  ])('finds %s, in something folded too', async ([rule, body], { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const page = await openPage({ look: 'light', width: 1280 });
    await page.setContent(html(`<details><summary>More of it</summary>${body}</details>`));
    const { violations } = await lookAt(page);
    expect(violations.map((violation) => violation.split(':')[0])).toContain(rule);
    await page.context().close();
  });

  test('tells faint text in a drawing from text that stands out', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const page = await openPage({ look: 'light', width: 1280 });
    await page.setContent(
      html(
        '<svg><text id="faint" y="20" fill="#8a8a8a">a</text><text id="clear" y="50" fill="#555">b</text></svg>',
      ),
    );
    // #8a8a8a on white is 3.45 : 1 and #555 is 7.46 : 1; WCAG 2.2 1.4.3 asks for 4.5 : 1.
    expect(await faintOf(page, ['#faint', '#clear'])).toEqual(['#faint']);
    await page.context().close();
  });
});
