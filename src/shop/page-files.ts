import { readFile } from 'node:fs/promises';
import { directionOf } from '../words/direction.ts';
import { tongueOf, type Words } from '../words/words.ts';
import type { Answer } from './answer.ts';

const PAGE = new URL('./page/', import.meta.url);
const STYLES = new URL('../styles/', import.meta.url);
const FONTS = new URL(
  '../../node_modules/@fontsource/barlow-semi-condensed/files/',
  import.meta.url,
);

const SCRIPTS = [
  'start.js',
  'store.js',
  'queue.js',
  'send.js',
  'api.js',
  'dom.js',
  'words.js',
  'pair.js',
  'home.js',
  'timer.js',
  'clock.js',
  'enter.js',
  'forms.js',
  'fields.js',
  'keypad.js',
  'kept.js',
  'status.js',
];

type PageFile = readonly [file: URL, type: string];

/** The page by its addresses: a fixed list, so that no other file of this machine has an address at all. It holds nothing of the ledger but the site's title and language. */
const FILES: ReadonlyMap<string, PageFile> = new Map<string, PageFile>([
  ['/page.css', [new URL('page.css', PAGE), 'text/css']],
  ['/forms.css', [new URL('forms.css', PAGE), 'text/css']],
  ['/tokens.css', [new URL('tokens.css', STYLES), 'text/css']],
  ['/worker.js', [new URL('worker.js', PAGE), 'text/javascript']],
  ['/icon.svg', [new URL('icon.svg', PAGE), 'image/svg+xml']],
  ...SCRIPTS.map((name): [string, PageFile] => [
    `/${name}`,
    [new URL(name, PAGE), 'text/javascript'],
  ]),
  ...['400', '600'].map((weight): [string, PageFile] => [
    `/lettering-${weight}.woff2`,
    [new URL(`barlow-semi-condensed-latin-${weight}-normal.woff2`, FONTS), 'font/woff2'],
  ]),
]);

/** What the shell of the page says of the site. */
export interface Shell {
  readonly title: string;
  readonly language: string;
}

/** An answer from the page's own files; undefined for any other address. */
export async function pageFile(
  path: string,
  { title, language }: Shell,
): Promise<Answer | undefined> {
  const { words, tag } = tongueOf(language);
  if (path === '/') {
    const html = await readFile(new URL('page.html', PAGE), 'utf8');
    const body = html
      .replace('lang="en" dir="ltr"', `lang="${escaped(tag)}" dir="${directionOf(tag)}"`)
      .replace(
        /<title>.*<\/title>/,
        () => `<title>${escaped(`${words.shop.title} – ${title}`)}</title>`,
      );
    return { status: 200, type: 'text/html; charset=utf-8', body };
  }
  if (path === '/words.json')
    return {
      status: 200,
      type: 'application/json',
      body: JSON.stringify({ language: tag, title, words: words.shop, names: namesIn(words) }),
    };
  if (path === '/page.webmanifest')
    return {
      status: 200,
      type: 'application/manifest+json',
      body: JSON.stringify({
        name: `${words.shop.title} – ${title}`,
        short_name: words.shop.title,
        start_url: '/',
        display: 'standalone',
        background_color: '#f7f5ee',
        theme_color: '#f7f5ee',
        icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' }],
      }),
    };
  const found = FILES.get(path);
  if (found === undefined) return undefined;
  return { status: 200, type: found[1], body: await readFile(found[0]) };
}

/** Every address of the page, for the copy that a phone keeps. */
export const pageAddresses: readonly string[] = [
  '/',
  '/words.json',
  '/page.webmanifest',
  ...FILES.keys(),
].filter((path) => path !== '/worker.js');

/** What the site calls the words of the ledger that the page offers. */
function namesIn({ money, measure, parts }: Words) {
  return { categories: money.categories, states: measure.states, found: parts.survey.found };
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
