import { readdirSync } from 'node:fs';
import { expect, inject, test } from 'vitest';
import { TAKEN } from '../../src/read/files.ts';
import { attribute, type Element, type Page, readPages, select, textOf } from './pages.ts';

const site = inject('site');
const pages = readPages(site);

/** Pages for which something does not hold, by file. */
const pagesWhere = (isWrong: (page: Page) => boolean) =>
  pages.filter(isWrong).map(({ file }) => file);

const inHead = (page: Page, tag: string, name: string, value: string) =>
  select(page.root, tag).filter((element) => attribute(element, name) === value);

test('no project can have the name of a folder that the site has besides', () => {
  const folders = readdirSync(site.folder, { withFileTypes: true })
    .filter((item) => item.isDirectory())
    .map(({ name }) => name);
  const projects = ['lapwing', 'ostermoor'];
  expect(folders.sort()).toEqual([...TAKEN, ...projects].sort());
});

test('the demo has a page for every entry and every spec, and the pages around them', () => {
  expect(pages.map(({ file }) => file)).toEqual(
    expect.arrayContaining([
      '404.html',
      'index.html',
      'method/index.html',
      'lapwing/index.html',
      'lapwing/log/index.html',
      'lapwing/log/2025-08-03-four-scales/index.html',
      'lapwing/specs/index.html',
      'lapwing/specs/wheelbase/index.html',
      'lapwing/costs/index.html',
      'lapwing/hours/index.html',
      'lapwing/parts/index.html',
      'ostermoor/index.html',
    ]),
  );
});

test('every page has one h1 with words in it', () => {
  const heads = (page: Page) => select(page.root, 'h1');
  expect(pagesWhere((page) => heads(page).length !== 1)).toEqual([]);
  expect(pagesWhere((page) => heads(page).some((head) => textOf(head) === ''))).toEqual([]);
});

test('headings go down one level at a time', () => {
  const skips = (page: Page) => {
    const levels = select(page.root, '*').flatMap(({ tagName }) =>
      /^h[1-6]$/.test(tagName) ? Number(tagName[1]) : [],
    );
    return levels.some((level, index) => level > (levels[index - 1] ?? 0) + 1);
  };
  expect(pagesWhere(skips)).toEqual([]);
});

test('no id stands twice on a page', () => {
  const twice = pages.flatMap(({ file, root }) => {
    const ids = select(root, '*').flatMap((element) => attribute(element, 'id') ?? []);
    return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${file}#${id}`);
  });
  expect(twice).toEqual([]);
});

test('every page has a title of its own and a description', () => {
  const titles = pages.map(({ root }) => select(root, 'title').map(textOf).join());
  expect(titles.filter((title, index) => title === '' || titles.indexOf(title) !== index)).toEqual(
    [],
  );
  expect(
    pagesWhere((page) => {
      const [description] = inHead(page, 'meta', 'name', 'description');
      return !description || (attribute(description, 'content') ?? '').length < 20;
    }),
  ).toEqual([]);
});

test('every page names its own address as the canonical one, or that it leads on to; the page for what is not found names none', () => {
  for (const page of pages) {
    const canonical = inHead(page, 'link', 'rel', 'canonical').map((link) =>
      attribute(link, 'href'),
    );
    const robots = inHead(page, 'meta', 'name', 'robots').map((meta) => attribute(meta, 'content'));
    const [leadsOn] = inHead(page, 'meta', 'http-equiv', 'refresh');
    const next = leadsOn && attribute(leadsOn, 'content')?.replace('0; url=', '');
    // The search has no content of its own to be found.
    if (['404.html', 'search/index.html'].includes(page.file))
      expect([canonical, robots]).toEqual([[], ['noindex']]);
    else if (next)
      expect([canonical, robots]).toEqual([[new URL(next, page.url).href], ['noindex']]);
    else expect([canonical, robots]).toEqual([[page.url], []]);
  }
});

/** Structured data, which is not run; the button that copies where a page can be shared; the control of a pair; the check of marks; the search; what is new in a log; the strip about the row that an address points at. */
function mayHave(file: string, script: Element): boolean {
  const src = attribute(script, 'src');
  if (script.tagName !== 'script') return false;
  if (attribute(script, 'type') === 'application/ld+json') return src === undefined;
  return (
    (src === '/copy.js' && /\/(specs|parts|log|photos)\/.+\/index\.html$/.test(file)) ||
    (src === '/reveal.js' && /\/log\/.+\/index\.html$/.test(file)) ||
    (src === '/visit.js' && /\/log\/index\.html$/.test(file)) ||
    (/^\/assets\/PointedAt\.[\w.-]+\.js$/.test(src ?? '') && file.includes('/')) ||
    (src === '/search.js' && file === 'search/index.html') ||
    (src?.endsWith('/marks/marks.js') === true && file.endsWith('/marks/index.html'))
  );
}

test('no page has a script of its own, an event handler or an inline style', () => {
  const active = pages.flatMap(({ file, root }) =>
    select(root, '*')
      .filter(
        (element) =>
          (['script', 'iframe', 'object', 'embed'].includes(element.tagName) &&
            !mayHave(file, element)) ||
          element.attrs.some(
            ({ name, value }) =>
              /^on/.test(name) || /^\s*javascript:/i.test(value) || name === 'style',
          ),
      )
      .map(({ tagName }) => `${file} ${tagName}`),
  );
  expect(active).toEqual([]);
});

test('nothing is loaded from another host', () => {
  const loaded = pages.flatMap(({ root, url }) =>
    select(root, '*').flatMap((element) => {
      const names = element.tagName === 'link' ? ['href'] : ['src', 'srcset', 'poster'];
      return names
        .flatMap((name) => attribute(element, name) ?? [])
        .filter((address) => new URL(address, url).origin !== new URL(site.address).origin);
    }),
  );
  expect(loaded).toEqual([]);
});
