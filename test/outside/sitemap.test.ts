import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { attribute, readPages, select } from '../site/pages.ts';
import { schemaErrors } from './xml-schema.ts';

// The schema of sitemaps.org, as the npm package "sitemap" ships it.
const XSD = 'node_modules/sitemap/schema/sitemap.xsd';
const site = inject('site');
const xml = await readFile(join(site.folder, 'sitemap.xml'), 'utf8');
const locations = [...xml.matchAll(/<loc>(.*?)<\/loc>/g)].map(([, loc = '']) => loc);

describe('the sitemap', () => {
  test('fits the schema of sitemaps.org', async () => {
    expect(await schemaErrors(xml, XSD, 'schema')).toEqual([]);
  });

  test('lists every page that may be indexed, each once, and no other', () => {
    const indexable = readPages(site).filter(
      ({ root }) => !select(root, 'meta').some((meta) => attribute(meta, 'content') === 'noindex'),
    );
    expect(indexable.length).toBeGreaterThan(100);
    expect([...locations].sort()).toEqual(indexable.map(({ url }) => url).sort());
  });

  // sitemaps.org protocol 0.9: at most 50,000 addresses of less than 2,048 characters, all on the host of the sitemap.
  test('keeps to the limits that a schema cannot see', () => {
    expect(locations.length).toBeLessThanOrEqual(50_000);
    expect(locations.filter((loc) => !loc.startsWith(site.address) || loc.length >= 2048)).toEqual(
      [],
    );
  });

  test('is named in robots.txt by its whole address', async () => {
    const robots = await readFile(join(site.folder, 'robots.txt'), 'utf8');
    expect(robots).toContain(`\nSitemap: ${site.address}sitemap.xml\n`);
  });
});

describe('the schema check', () => {
  test.each([
    ['a date that is none', /<lastmod>.*?<\/lastmod>/, '<lastmod>26.9.2026</lastmod>'],
    ['an address that is too short', /<loc>.*?<\/loc>/, '<loc>/a/</loc>'],
    ['an element out of place', /<url>/, '<url><title>x</title>'],
    ['another namespace', /schemas\/sitemap\/0\.9/, 'schemas/sitemap/0.8'],
  ])('finds %s', async (_, pattern, instead) => {
    expect(await schemaErrors(xml.replace(pattern, instead), XSD, 'schema')).not.toEqual([]);
  });
});
