import type { Book } from '../book/types.ts';
import { privateNumbers } from '../dossier/identity.ts';
import { addressesOf } from '../publish/address.ts';
import { entryFeeds } from '../publish/entry-feed.ts';
import { searchedPages } from '../publish/search-page.ts';
import { tongueOf } from '../words/words.ts';
import type { ToldOutside } from './ready.ts';

/** What a build has to know of the content once pages are made, as plain data. Throws for content without a site. */
export function toldOutside(book: Book): ToldOutside {
  const { site, projects } = book;
  if (site === undefined) throw new Error('this is our bug: a sound content folder has a site');
  const to = addressesOf(site.address);
  return {
    site,
    ids: projects.map(({ id }) => id),
    entries: projects.reduce((count, project) => count + project.entries.length, 0),
    searched: searchedPages(book, to, tongueOf(site.language).tag),
    feeds: entryFeeds(book, site, to),
    secrets: privateNumbers(projects),
  };
}
