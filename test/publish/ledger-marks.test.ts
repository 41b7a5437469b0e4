import { expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { atomFeed } from '../../src/publish/atom.ts';
import { entryFeeds } from '../../src/publish/entry-feed.ts';
import { markOver, newestMark, showMark, signedBy } from '../../src/publish/ledger-marks.ts';
import { sitePages } from '../../src/publish/sitemap.ts';
import type { Day } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import { markPress } from '../check/marked-content.ts';

const book = await inContentFolder({}, async (folder) => {
  await markPress(folder, '2025-03-20');
  await markPress(folder, '2025-05-01');
  return openBook(folder, { now: NOON });
});
const [press] = book.projects;
const { site } = book;
if (!press || !site) throw new Error('the press can not be opened');
const to = addressesOf(site.address);

test('an entry goes by the first mark on or after its day, and one since the newest has none yet', () => {
  const dateOver = (day: string) => markOver(press, day as Day)?.date;
  expect(['2025-03-20', '2025-03-21', '2025-05-01', '2025-05-02'].map(dateOver)).toEqual([
    '2025-03-20',
    '2025-05-01',
    '2025-05-01',
    undefined,
  ]);
});

test('a mark is shown with its rows, its day, its root, and who signed it', () => {
  const mark = newestMark(press);
  if (mark === undefined) throw new Error('the press has no mark');
  const { rows, root, shortRoot } = showMark(mark, 'en-GB');
  expect(rows).toBe(`${mark.size} rows`);
  expect(root).toBe(Buffer.from(mark.root).toString('base64'));
  expect(root.startsWith(shortRoot.slice(0, -1))).toBe(true);
  expect(signedBy(mark, press, wordsOf('en'))).toBe('nobody');
  expect(signedBy(mark, press, wordsOf('de'))).toBe('niemandem');
  expect(showMark(mark, 'de').rows).toBe(`${mark.size} Zeilen`);
});

test('the feed gives size and root with each entry, and a related link to the page of marks', () => {
  const [whole] = entryFeeds(book, site, to);
  const feed = whole && atomFeed(whole, { site, to, htmlOf: () => '' });
  const root = Buffer.from(newestMark(press)?.root ?? []).toString('base64');
  expect(feed).toContain(
    '<link rel="related" type="text/html" title="Marks" href="https://shed.example/press/marks/"/>',
  );
  expect(feed).toContain(`${newestMark(press)?.size} rows, root ${root}&lt;/a&gt;`);
});

test('the sitemap lists the page of marks with the day of the newest', () => {
  expect(sitePages(book, to)).toContainEqual({ path: '/press/marks/', changed: '2025-05-01' });
});
