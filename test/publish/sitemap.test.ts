import { expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { sitemap, sitePages } from '../../src/publish/sitemap.ts';
import type { Day } from '../../src/time/day.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

const book = await inContentFolder({}, (folder) => openBook(folder, { now: NOON }));
const to = addressesOf('https://shed.example/');

test('sitePages lists every page with the day its content last changed, and no day for a spec without a reading', () => {
  const pages = sitePages(book, to).map(({ path, changed }) => `${path} ${changed}`);
  expect(pages).toEqual([
    '/ 2025-04-13',
    '/method/ 2025-04-13',
    '/press/ 2025-04-13',
    '/press/log/ 2025-04-13',
    '/press/index/ 2025-04-13',
    '/press/specs/ 2025-04-13',
    '/press/costs/ 2025-04-13',
    '/press/costs/parts/ 2025-04-13',
    '/press/donors/spare-press/ 2025-04-13',
    '/press/hours/ 2025-04-13',
    '/press/plan/ 2025-04-13',
    '/press/forecast/ 2025-04-13',
    '/press/earned-value/ 2025-04-13',
    '/press/parts/ 2025-04-13',
    '/press/sources/ 2025-04-13',
    '/press/wanted/ 2025-04-13',
    '/press/corrections/ 2025-04-13',
    '/press/data/ 2025-04-13',
    '/press/survey/ 2025-04-13',
    '/press/choices/ 2025-04-13',
    '/press/dossier/ 2025-04-13',
    '/press/costs/2025/ 2025-03-10',
    '/press/hours/2025/ 2025-03-08',
    '/press/parts/gib/ 2025-04-12',
    '/press/parts/nut/ undefined',
    '/press/log/2025-04-13-the-ram-slides/ 2025-04-13',
    '/press/specs/ram-play/ 2025-04-13',
    '/press/specs/screw-torque/ undefined',
  ]);
});

test('sitePages lists the budget page of a project with an order, and of no other', async () => {
  const order = 'id,date,amount,category,phase,what\no-1,2025-03-01,20,part,rebuild,A nut\n';
  const files = { 'press/ledger/orders.csv': order };
  const ordered = await inContentFolder(files, (folder) => openBook(folder, { now: NOON }));
  const paths = (some: typeof book) => sitePages(some, to).map(({ path }) => path);
  expect(paths(ordered).filter((path) => !paths(book).includes(path))).toEqual(['/press/budget/']);
});

test('sitePages lists the gallery and every photo of a project that shows one', async () => {
  const record = { 'press/photos.yaml': '- { id: ram, file: ram.jpg, taken: 2025-04-02 }\n' };
  const shown = await inContentFolder(record, (folder) => openBook(folder, { now: NOON }));
  const pages = sitePages(shown, to).map(({ path, changed }) => `${path} ${changed}`);
  expect(pages).toContain('/press/photos/ 2025-04-13');
  expect(pages).toContain('/press/photos/ram/ 2025-04-02');
});

test('sitemap writes addresses with the host, lastmod only where it is known, and escapes what XML needs', () => {
  const day = '2025-04-13' as Day;
  const text = sitemap(
    [
      { path: '/press/?a=1&b=<2>', changed: day },
      { path: '/press/specs/screw-torque/', changed: undefined },
    ],
    to,
  );
  expect(text).toBe(`<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
  <url><loc>https://shed.example/press/?a=1&amp;b=%3C2%3E</loc><lastmod>2025-04-13</lastmod></url>
  <url><loc>https://shed.example/press/specs/screw-torque/</loc></url>
</urlset>
`);
});
