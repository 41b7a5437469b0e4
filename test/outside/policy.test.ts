import { afterAll, describe, expect, inject, test } from 'vitest';
import { attribute, readPages, select, textOf } from '../site/pages.ts';
import { openBrowser, serve } from './browser.ts';
import { pageKinds } from './page-kinds.ts';

// Content Security Policy Level 3 (W3C), as a real browser keeps it.
const demo = inject('site');
const kinds = await pageKinds();
const browser = await openBrowser();
const site = await serve(demo.folder);
const { browser: noBrowser } = inject('missing');
const pages = readPages(demo);
afterAll(async () => {
  await browser?.close();
  site.close();
});

/** What the browser reports as broken rules of the page's policy: the directive, and what was kept out. */
async function brokenOn(path: string, plant = ''): Promise<string[]> {
  const context = await browser?.newContext();
  const page = await context?.newPage();
  if (page === undefined) throw new Error('there is no browser');
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(window, { broken: seen });
    document.addEventListener('securitypolicyviolation', (event) =>
      seen.push(`${event.effectiveDirective} ${event.blockedURI}`),
    );
  });
  if (plant !== '')
    await page.route(`${site.address}${path}`, async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ body: (await answer.text()).replace('</main>', `${plant}</main>`) });
    });
  await page.goto(site.address + path, { waitUntil: 'load' });
  await page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
  const broken = await page.evaluate(() => (window as unknown as { broken: string[] }).broken);
  await context?.close();
  return broken;
}

describe('the policy of what a page may load', () => {
  test('is on every page, and lets nothing in from elsewhere', () => {
    for (const { file, root } of pages) {
      const policy = select(root, 'meta').find(
        (meta) => attribute(meta, 'http-equiv') === 'content-security-policy',
      );
      const content = policy && attribute(policy, 'content');
      expect(content, file).toContain("default-src 'none'");
      expect(content, file).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
    }
  });

  test.for(kinds)('is kept by /%s', async (kind, { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    expect(await brokenOn(kind)).toEqual([]);
  });

  test.for([
    ['a style in the page', '<p style="color: red">x</p>', 'style-src-attr inline'],
    ['a script in the page', '<script>window.ran = 1</script>', 'script-src-elem inline'],
    ['a handler', '<img src="/icon.svg" alt="" onload="window.ran = 1">', 'script-src-attr inline'],
    [
      'a picture from elsewhere',
      '<img src="https://elsewhere.example/x.png" alt="">',
      'img-src https://elsewhere.example/x.png',
    ],
    [
      'a script from elsewhere',
      '<script src="https://elsewhere.example/x.js"></script>',
      'script-src-elem https://elsewhere.example/x.js',
    ],
  ] as const)('keeps out %s', async ([, plant, broken], { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    expect(await brokenOn('method/', plant)).toContain(broken);
  });
});

describe('links to other sites', () => {
  test('are marked, and tell nobody where a reader came from', () => {
    let count = 0;
    for (const { file, root } of pages) {
      const referrer = select(root, 'meta').find((meta) => attribute(meta, 'name') === 'referrer');
      if (!file.endsWith('404.html') && referrer)
        expect(attribute(referrer, 'content'), file).toBe('same-origin');
      for (const link of select(root, 'a')) {
        const href = attribute(link, 'href') ?? '';
        if (!/^https?:/.test(href) || href.startsWith(demo.address)) continue;
        count++;
        expect(attribute(link, 'rel'), `${file}: ${textOf(link)}`).toBe('external noreferrer');
      }
    }
    expect(count).toBeGreaterThan(20);
  });
});
