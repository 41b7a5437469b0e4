import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { makeBook } from '../book/open.ts';
import type { Book, Entry, Project } from '../book/types.ts';
import type { CrossChecks } from '../measure/cross-check.ts';
import type { Site } from '../model/kinds.ts';
import type { PhotoManifest } from '../photo/manifest.ts';
import { type Addresses, addressesOf } from '../publish/address.ts';
import { contentLanguage } from '../publish/content-language.ts';
import { readContent } from '../read/content.ts';
import { listContent } from '../read/files.ts';
import { type OwnLanguage, ownLanguage } from '../words/own-language.ts';
import { tongueOf, type Words } from '../words/words.ts';
import { keptCrossChecks } from './cross-checks.ts';
import { contentDir, workDir } from './folders.ts';
import { handedContent, pagesHere } from './pages-here.ts';

/** What every page is made from. */
export interface SiteNow {
  readonly book: Book;
  /** The projects whose pages are made in this run. */
  readonly here: readonly Project[];
  readonly site: Site;
  readonly to: Addresses;
  /** Tag of the language that the pages are in, for their words, dates and numbers. */
  readonly language: string;
  readonly words: Words;
  /** Attributes for a builder's text that is in another language than the pages. */
  readonly own: (project: Project, entry?: Entry) => OwnLanguage;
  readonly photos: PhotoManifest;
  /** Drawn distributions of worked-out values. */
  readonly checks: CrossChecks;
}

let kept: { readonly stamp: string; readonly now: Promise<SiteNow> } | undefined;

/**
 * The site as its files are now. A build reads them once; the dev server reads them again when one has changed,
 * which it sees by their times and sizes, since no module of the bundler stands for a ledger file.
 */
export async function siteNow(): Promise<SiteNow> {
  const stamp = import.meta.env.DEV ? await stampOf() : 'build';
  if (kept?.stamp !== stamp) kept = { stamp, now: load() };
  return kept.now;
}

async function load(): Promise<SiteNow> {
  const checks = await keptCrossChecks();
  const wanted = pagesHere();
  const content = handedContent() ?? (await readContent(contentDir, looking(wanted)));
  const book = makeBook(content, { drafts: import.meta.env.DEV, checks });
  const here = book.projects.filter(({ id }) => wanted?.includes(id) ?? true);
  const site = book.site;
  if (site === undefined)
    throw new Error(`site.yaml in ${contentDir} can't be used; run "npm run check"`);
  const photos = JSON.parse(await readFile(join(workDir, 'photos.json'), 'utf8')) as PhotoManifest;
  const { words, tag: language } = tongueOf(site.language);
  const to = addressesOf(site.address);
  const own = (project: Project, entry?: Entry) =>
    ownLanguage(contentLanguage(site, project, entry), language);
  return { book, here, site, to, language, words, own, photos, checks };
}

/** A run that makes pages of some projects reads these alone; the pages that tell of all read all. */
function looking(wanted: readonly string[] | undefined): { projects?: readonly string[] } {
  return wanted?.length ? { projects: wanted } : {};
}

async function stampOf(): Promise<string> {
  const { projects } = await listContent(contentDir);
  const files = projects.flatMap(({ id, records, entries }) => [
    ...records.map(({ file }) => file),
    ...entries,
    `${id}/marks.txt`,
  ]);
  const stamps = await Promise.all(
    [
      join(workDir, 'photos.json'),
      ...['site.yaml', ...files].map((file) => join(contentDir, file)),
    ].map(stampOfFile),
  );
  return stamps.join(' ');
}

async function stampOfFile(path: string): Promise<string> {
  try {
    const { mtimeMs, size } = await stat(path);
    return `${mtimeMs}-${size}`;
  } catch {
    return 'none';
  }
}
