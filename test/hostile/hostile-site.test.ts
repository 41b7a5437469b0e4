import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { parse } from 'csv-parse/sync';
import { parse as parseHtml } from 'parse5';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBrowser, serve } from '../outside/browser.ts';
import { attribute, filesOf, type Page, readPages, select, textOf } from '../site/pages.ts';
import { attacks } from './attacks.ts';
import { hostileContent } from './hostile-content.ts';
import { visit } from './visit.ts';

const ADDRESS = 'https://shed.example/';
const { browser: noBrowser } = inject('missing');

let home = '';
let folder = '';
let pages: Page[] = [];

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'witnessmark-hostile-'));
  const content = join(home, 'content');
  for (const [file, text] of Object.entries(await hostileContent())) {
    await mkdir(dirname(join(content, file)), { recursive: true });
    await writeFile(join(content, file), text);
  }
  folder = join(home, 'site');
  const env = {
    ...process.env,
    NODE_ENV: 'production',
    WITNESSMARK_CONTENT: content,
    WITNESSMARK_DIST: folder,
    WITNESSMARK_WORK: join(home, 'work'),
  };
  await promisify(execFile)(process.execPath, ['src/cli/run.mjs', 'build'], { env });
  pages = readPages({ folder, address: ADDRESS });
}, 240_000);
afterAll(() => rm(home, { recursive: true, force: true }));

const textsOf = async (ending: RegExp) =>
  Promise.all(
    filesOf(folder)
      .filter((file) => ending.test(file))
      .map(async (file) => [file, await readFile(join(folder, file), 'utf8')] as const),
  );

/** Elements of this site's pages; what is not here was made of a builder's text. */
const ELEMENTS = new Set(
  `html head title meta link script body header nav main article section aside footer search h1 h2 h3 h4 p ul ol li dl dt dd div span
  a abbr b bdi blockquote br button caption cite code col colgroup copy-text data datalist del details em figcaption figure form hr i img input ins kbd
  label ledger-check math menclose mfrac mi mn mo mrow msqrt msub msup mark noscript option output picture pointed-at pre q s select since-visit
  site-search small source strong sub summary sup svg circle clippath defs desc ellipse g line marker path pattern polygon polyline rect
  text tspan use table tbody td template tfoot th thead time tr u var wbr`.split(/\s+/),
);

/** Elements and attributes of a page that this site does not write. */
function strangeOn({ file, root }: Pick<Page, 'file' | 'root'>): string[] {
  return select(root, '*').flatMap((element) => [
    ...(ELEMENTS.has(element.tagName.toLowerCase()) ? [] : [`${file}: <${element.tagName}>`]),
    ...element.attrs
      .filter(({ name, value }) => isStrange(name, value))
      .map(({ name, value }) => `${file}: ${name}="${value}"`),
  ]);
}

function isStrange(name: string, value: string): boolean {
  if (/^on|^style$|^srcdoc$|[^\w:-]/.test(name)) return true;
  return (
    /^(href|src|action|xlink:href)$/.test(name) && /^\s*(javascript|data|vbscript):/i.test(value)
  );
}

describe('a site of which every text is an attack', () => {
  test('shows each of them as it was written', () => {
    const ledgers = pages.filter(({ file }) => file.startsWith('press/hours/'));
    const shown = ledgers.map(({ root }) => textOf(root)).join('\n');
    const plain = (text: string) => text.normalize('NFC').replace(/\s+/g, ' ').trim();
    expect(attacks.length).toBeGreaterThan(450);
    expect(attacks.filter((text) => !shown.includes(plain(text)))).toEqual([]);
  });

  test('has no element, handler, style or link that came from a text', () => {
    expect(pages.length).toBeGreaterThan(30);
    const strange = pages.flatMap(strangeOn);
    expect([...new Set(strange)]).toEqual([]);
  });

  test('has no script but its own files, and structured data that is whole', () => {
    let blocks = 0;
    for (const { file, root } of pages)
      for (const script of select(root, 'script')) {
        if (attribute(script, 'type') !== 'application/ld+json') {
          expect(attribute(script, 'src'), file).toMatch(/^\/[\w./-]+\.js$/);
          expect(textOf(script), file).toBe('');
          continue;
        }
        blocks++;
        expect(JSON.parse(textOf(script)), file).toHaveProperty('@context');
      }
    expect(blocks).toBeGreaterThan(5);
  });

  test('links to nowhere but where its own rules allow', () => {
    const outside = new Set(
      pages.flatMap(({ root }) =>
        select(root, 'a').flatMap((link) => {
          const url = new URL(attribute(link, 'href') ?? '', ADDRESS);
          return url.origin === new URL(ADDRESS).origin ? [] : [url.origin];
        }),
      ),
    );
    // Markdown makes a link of an https address that stands in an entry's text.
    expect([...outside].sort()).toEqual([
      'https://elsewhere.example',
      'https://video.example',
      'https://x.example',
    ]);
  });

  test('has tables that no spreadsheet runs anything of', async () => {
    const tables = await textsOf(/\.csv$/);
    expect(tables.length).toBeGreaterThan(10);
    for (const [file, text] of tables) {
      const rows: string[][] = parse(text);
      expect(
        rows.every((row) => row.length === rows[0]?.length),
        file,
      ).toBe(true);
      const run = rows.flat().filter((cell) => /^[=+\-@＝＋－＠\t\r]/.test(cell));
      expect(
        run.filter((cell) => !/^-?\d+(\.\d+)?(e-\d+)?$/.test(cell)),
        file,
      ).toEqual([]);
    }
  });

  test('has feeds and data whose texts are those that were written', async () => {
    for (const [file, text] of await textsOf(/\.json$/))
      expect(() => JSON.parse(text), file).not.toThrow();
    const book = JSON.parse(await readFile(join(folder, 'press/data/book.json'), 'utf8'));
    const rows = new Set(book.tables.hours.map(({ what }: { what: string }) => what));
    expect(attacks.filter((text) => !rows.has(text.normalize('NFC')))).toEqual([]);
    const feeds = await textsOf(/feed\.json$/);
    const told = feeds.flatMap(([, text]) => JSON.parse(text).items as { content_html: string }[]);
    expect(told.length).toBeGreaterThan(1);
    for (const { content_html } of told) {
      const page = { file: 'feed', root: parseHtml(content_html) };
      expect(strangeOn(page)).toEqual([]);
      expect(select(page.root, 'script')).toEqual([]);
    }
  });
});

test('a browser runs, asks for and is told nothing that came from a text', async ({ skip }) => {
  skip(noBrowser !== undefined, noBrowser);
  const browser = await openBrowser();
  if (browser === undefined) throw new Error('there is no browser');
  const site = await serve(folder);
  try {
    // A page that moved leads on before it can be looked at.
    const staying = pages.filter(
      ({ root }) =>
        !select(root, 'meta').some((meta) => attribute(meta, 'http-equiv') === 'refresh'),
    );
    const visited = await visit(
      browser,
      site.address,
      staying.map(({ file }) => file),
    );
    expect(visited.happened).toEqual([]);
    expect(visited.pages).toBe(staying.length);
    const written = await textsOf(/\.(atom|xml|svg|json|csv)$/);
    const xml = written.filter(([file]) => /\.(atom|xml|svg)$/.test(file));
    expect(xml.length).toBeGreaterThan(2);
    expect(await visited.brokenXml(xml)).toEqual([]);
    expect(await visited.search('alert')).toEqual([]);
  } finally {
    await browser.close();
    site.close();
  }
}, 120_000);

test('what a text would do if it were not kept from it is noticed', async ({ skip }) => {
  skip(noBrowser !== undefined, noBrowser);
  const browser = await openBrowser();
  if (browser === undefined) throw new Error('there is no browser');
  const planted = await mkdtemp(join(tmpdir(), 'witnessmark-planted-'));
  const page = `<main><script>alert(1)</script><p onmouseover="alert(2)">x</p>
<img src="https://elsewhere.example/x.png" alt=""><script>nothing()</script></main>`;
  await writeFile(join(planted, 'index.html'), page);
  const site = await serve(planted);
  try {
    const { happened } = await visit(browser, site.address, ['index.html']);
    expect(happened).toEqual(
      expect.arrayContaining([
        'index.html: dialog 1',
        'index.html: dialog 2',
        'index.html: asked for https://elsewhere.example/x.png',
        'index.html: nothing is not defined',
      ]),
    );
    const root = parseHtml(page);
    expect(strangeOn({ file: 'x', root })).toEqual(['x: onmouseover="alert(2)"']);
  } finally {
    await browser.close();
    site.close();
    await rm(planted, { recursive: true, force: true });
  }
}, 60_000);
