import { expect, inject, test } from 'vitest';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const site = inject('site');
const { page } = await openBuiltDemo();

test('an old address leads on at once, by a link too, and is not listed', () => {
  const now = `${site.address}ostermoor/specs/nose-run-out/`;
  const { root } = page('ostermoor/specs/nose-runout/');
  const metas = select(root, 'meta');
  const content = (name: string, value: string) =>
    metas
      .filter((meta) => attribute(meta, name) === value)
      .map((meta) => attribute(meta, 'content'));
  expect(content('http-equiv', 'refresh')).toEqual(['0; url=/ostermoor/specs/nose-run-out/']);
  expect(content('name', 'robots')).toEqual(['noindex']);
  const canonical = select(root, 'link').filter((link) => attribute(link, 'rel') === 'canonical');
  expect(canonical.map((link) => attribute(link, 'href'))).toEqual([now]);
  const links = select(root, 'p.lead').flatMap((lead) => select(lead, 'a'));
  expect(links.map((link) => [attribute(link, 'href'), textOf(link)])).toEqual([
    ['/ostermoor/specs/nose-run-out/', now],
  ]);
});

test('entries, parts and specs can be pointed at: address, code, and a line to cite', () => {
  for (const path of [
    'lapwing/log/2025-08-03-four-scales/',
    'ostermoor/parts/change-gears/',
    'lapwing/specs/front-axle-load/',
  ]) {
    const [share] = select(page(path).root, 'section.share');
    if (share === undefined) throw new Error(`${path} can't be shared`);
    const [code] = select(share, 'svg');
    expect(code && attribute(code, 'aria-label')).toBe(`QR code of ${site.address}${path}`);
    expect(select(share, '.address').map(textOf)).toEqual([`${site.address}${path}`]);
    expect(select(share, '.citation').map(textOf).join()).toContain(`, ${site.address}${path}`);
  }
});

test('phases and rows link to their own address', () => {
  const { root } = page('lapwing/hours/');
  const named = select(root, '*').filter((element) =>
    attribute(element, 'id')?.startsWith('phase-'),
  );
  expect(named.length).toBeGreaterThan(3);
  for (const element of named)
    expect(select(element, 'a').map((link) => attribute(link, 'href'))).toContain(
      `#${attribute(element, 'id')}`,
    );
});

test('every page names the feeds of the site, and those of a project on its pages', () => {
  const feeds = (path: string) =>
    select(page(path).root, 'link')
      .filter((link) => attribute(link, 'rel') === 'alternate')
      .map((link) => attribute(link, 'href'));
  expect(feeds('')).toEqual(['/feed.atom', '/feed.json']);
  expect(feeds('lapwing/costs/')).toEqual([
    '/lapwing/feed.atom',
    '/lapwing/feed.json',
    '/feed.atom',
    '/feed.json',
  ]);
});
