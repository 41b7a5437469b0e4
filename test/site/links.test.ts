import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { deadLinks } from './dead-links.ts';

const site = inject('site');

test('every link of the site leads to a file that is there, and to an id that its page has', () => {
  expect(deadLinks(site)).toEqual([]);
});

describe('the search for dead links', () => {
  let folder: string;
  const address = 'https://log.example/shed/';
  const page = (body: string) => `<!doctype html><title>t</title><body id="top">${body}`;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'witnessmark-links-'));
    await writeFile(join(folder, 'index.html'), page('<h2 id="ä-1">x</h2>'));
  });
  afterAll(() => rm(folder, { recursive: true }));

  test.each([
    ['a page that is not there', '<a href="/shed/gone/">x</a>', '/shed/gone/'],
    ['an id that is not there', '<a href="#gone">x</a>', '#gone'],
    ['an id that another page has not', '<a href="./#gone">x</a>', './#gone'],
    ["an address above the site's folder", '<a href="/">x</a>', '/'],
    ['a picture', '<img src="/shed/gone.webp">', '/shed/gone.webp'],
    ['one size of a picture', '<img srcset="./ 480w, big.webp 960w">', 'big.webp'],
    ['a link in a drawing', '<svg><a href="#gone"><text>x</text></a></svg>', '#gone'],
    ['a style sheet', '<link rel="stylesheet" href="gone.css">', 'gone.css'],
  ])('finds %s', async (_, body, to) => {
    await writeFile(join(folder, 'other.html'), page(body));
    expect(deadLinks({ folder, address })).toEqual([`${address}other.html → ${to}`]);
  });

  test.each([
    [
      'feed.atom',
      '<content type="html">&lt;a href="https://log.example/shed/x/">&lt;/a></content>',
    ],
    ['feed.json', '{ "url": "https://log.example/shed/x/" }'],
    ['sitemap.xml', '<loc>https://log.example/shed/x/</loc>'],
    ['robots.txt', 'Sitemap: https://log.example/shed/x/'],
    ['sheet.css', 'a { background: url(https://log.example/shed/x/) }'],
  ])('reads %s too', async (file, text) => {
    const copy = await mkdtemp(join(tmpdir(), 'witnessmark-links-'));
    await writeFile(join(copy, file), text);
    expect(deadLinks({ folder: copy, address })).toEqual([
      `${address}${file} → https://log.example/shed/x/`,
    ]);
    await rm(copy, { recursive: true });
  });

  test('lets links pass that live, and those to other hosts', async () => {
    const body =
      '<a href="./#%C3%A4-1">a</a><a href="#top">b</a><a href="https://other.example/x">c</a>';
    await writeFile(join(folder, 'other.html'), page(body));
    expect(deadLinks({ folder, address })).toEqual([]);
  });

  test('finds a link of the demo that was broken by hand', async () => {
    const copy = await mkdtemp(join(tmpdir(), 'witnessmark-links-'));
    await cp(site.folder, copy, { recursive: true });
    await rm(join(copy, 'method'), { recursive: true });
    expect(deadLinks({ ...site, folder: copy })).toContain(`${site.address} → /method/`);
    await rm(copy, { recursive: true });
  });
});
