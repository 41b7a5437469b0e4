import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { parse } from 'yaml';
import { addressesIn, structuredDataOf } from '../outside/structured-data.ts';
import { deadLinks } from './dead-links.ts';
import { attribute, type Element, filesOf, readPages, select } from './pages.ts';

const site = inject('siteInFolder');
const { address, folder } = site;
const pages = readPages(site);
const leadsOn = (meta: Element) => attribute(meta, 'http-equiv') === 'refresh';
const textOfFile = (file: string) => readFileSync(join(folder, file), 'utf8');

describe('a site that is published in a folder of its host', () => {
  test('has no link that leads out of the folder, or nowhere in it', () => {
    expect(address).toBe('https://x.example/y/');
    expect(filesOf(folder)).toContain('ostermoor/costs/index.html');
    expect(deadLinks(site)).toEqual([]);
  });

  test('names addresses in that folder in its pages, feed, sitemap and robots.txt', () => {
    // A page that leads on names the page it leads to, which is listed itself.
    const own = pages.filter(({ root }) => !select(root, 'meta').some(leadsOn));
    const canonical = own.flatMap(({ root }) =>
      select(root, 'link')
        .filter((link) => attribute(link, 'rel') === 'canonical')
        .flatMap((link) => attribute(link, 'href') ?? []),
    );
    const listed = [...textOfFile('sitemap.xml').matchAll(/<loc>(.*?)<\/loc>/g)];
    expect(canonical.sort()).toEqual(listed.map(([, loc]) => loc).sort());
    expect(canonical.filter((page) => !page.startsWith(address))).toEqual([]);
    expect(textOfFile('feed.atom')).toContain(`<id>${address}</id>`);
    expect(textOfFile('robots.txt')).toContain(`Sitemap: ${address}sitemap.xml\n`);
  });

  test('names addresses in that folder in its feeds and structured data too', () => {
    for (const file of ['feed.json', 'ostermoor/feed.json']) {
      const { home_page_url, feed_url, items } = JSON.parse(textOfFile(file));
      const urls = [home_page_url, feed_url, ...items.map(({ url }: { url: string }) => url)];
      expect(urls.filter((url) => !url.startsWith(address))).toEqual([]);
    }
    expect(textOfFile('ostermoor/feed.atom')).toContain(`<id>${address}ostermoor/</id>`);
    const data = structuredDataOf(pages).flatMap(({ data }) => addressesIn(data));
    expect(data.length).toBeGreaterThan(100);
    expect(data.filter((url) => !url.startsWith(address))).toEqual([]);
  });

  test('leads on from an old address to one in that folder', () => {
    const old = pages.find(({ file }) => file === 'ostermoor/specs/nose-runout/index.html');
    const [refresh] = old ? select(old.root, 'meta').filter(leadsOn) : [];
    expect(refresh && attribute(refresh, 'content')).toBe(
      '0; url=/y/ostermoor/specs/nose-run-out/',
    );
  });

  test('knows nothing of another address', () => {
    const { host } = new URL(inject('site').address);
    // A mark names the ledger as it was published, for ever; a post box may be at the same host.
    const others = filesOf(folder).filter((file) => !file.endsWith('marks/marks.txt'));
    // Nor is where readers may write to an address of the site.
    const { contact } = parse(readFileSync(join(site.content, 'site.yaml'), 'utf8'));
    const textWithout = (file: string) => textOfFile(file).replaceAll(contact, '');
    expect(others.filter((file) => textWithout(file).includes(host))).toEqual([]);
  });
});
