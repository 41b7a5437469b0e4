import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { attribute, filesOf, type Page, readPages, select } from './pages.ts';

/** An address that a file of the site gives, and the address of that file. */
interface Link {
  readonly from: string;
  readonly to: string;
}

/**
 * Addresses on the site's own host that lead nowhere: no such file, no such id on the page, or outside the folder that the site is published in.
 * Pages, style sheets, the feeds, the sitemap and robots.txt are all read.
 */
export function deadLinks(site: { folder: string; address: string }): string[] {
  const pages = readPages(site);
  const ids = new Map(pages.map((page) => [page.file, idsOf(page)]));
  const links = [...pages.flatMap(linksOfPage), ...filesOf(site.folder).flatMap(linksOfFile(site))];
  return links.flatMap(({ from, to }) => {
    const base = new URL(site.address);
    const target = URL.canParse(to, from) ? new URL(to, from) : undefined;
    if (target && target.origin !== base.origin) return [];

    const inside = target?.pathname.startsWith(base.pathname);
    const file = target && fileAt(site.folder, target.pathname.slice(base.pathname.length));
    const id = decodeURIComponent(target?.hash.slice(1) ?? '');
    const lives = inside && file !== undefined && (id === '' || ids.get(file)?.has(id));
    return lives ? [] : [`${from} → ${to}`];
  });
}

function idsOf({ root }: Page): ReadonlySet<string> {
  return new Set(select(root, '*').flatMap((element) => attribute(element, 'id') ?? []));
}

/** Where a path of the site is served from, as any static host does it. */
function fileAt(folder: string, path: string): string | undefined {
  const plain = decodeURIComponent(path);
  const file = plain === '' || plain.endsWith('/') ? `${plain}index.html` : plain;
  const whole = join(folder, file);
  return existsSync(whole) && statSync(whole).isFile() ? file : undefined;
}

function linksOfPage({ root, url }: Page): Link[] {
  const given = select(root, '*').flatMap((element) => [
    ...['href', 'src', 'poster', 'xlink:href'].flatMap((name) => attribute(element, name) ?? []),
    ...(attribute(element, 'srcset') ?? '')
      .split(',')
      .flatMap((candidate) => candidate.trim().split(/\s+/)[0] || []),
  ]);
  return given.map((to) => ({ from: url, to }));
}

function linksOfFile({ folder, address }: { folder: string; address: string }) {
  return (file: string): Link[] => {
    const pattern = LINKS_IN[file.replace(/^.*\./, '')];
    if (pattern === undefined) return [];
    const text = readFileSync(join(folder, file), 'utf8');
    const from = new URL(file, address).href;
    return [...unescapeXml(unescapeXml(text)).matchAll(pattern)].map(([, to = '']) => ({
      from,
      to,
    }));
  };
}

const LINKS_IN: Readonly<Record<string, RegExp>> = {
  atom: /(?:href|src)="([^"]*)"/g,
  json: /"(?:home_page_url|feed_url|next_url|url)": "([^"]*)"/g,
  xml: /<loc>([^<]*)<\/loc>/g,
  css: /url\(["']?([^"')]+)["']?\)/g,
  txt: /^Sitemap: *(\S+)/gm,
};

// A feed's content is HTML written as text, so its links are escaped once or twice.
function unescapeXml(text: string): string {
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}
