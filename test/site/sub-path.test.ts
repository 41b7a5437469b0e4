import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { deadLinks } from './dead-links.ts';
import { attribute, filesOf, readPages, select } from './pages.ts';

const site = inject('siteInFolder');
const { address, folder } = site;
const textOfFile = (file: string) => readFileSync(join(folder, file), 'utf8');

describe('a site that is published in a folder of its host', () => {
  test('has no link that leads out of the folder, or nowhere in it', () => {
    expect(address).toBe('https://x.example/y/');
    expect(filesOf(folder)).toContain('ostermoor/costs/index.html');
    expect(deadLinks(site)).toEqual([]);
  });

  test('names addresses in that folder in its pages, feed, sitemap and robots.txt', () => {
    const canonical = readPages(site).flatMap(({ root }) =>
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

  test('knows nothing of another address', () => {
    const { host } = new URL(inject('site').address);
    // A mark names the ledger as it was published, for ever; a post box may be at the same host.
    const others = filesOf(folder).filter((file) => !file.endsWith('marks/marks.txt'));
    expect(
      others.filter((file) => textOfFile(file).replaceAll(`@${host}`, '').includes(host)),
    ).toEqual([]);
  });
});
