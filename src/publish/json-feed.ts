import { entryContent, type FeedContext } from './atom.ts';
import { archiveBefore, type EntryFeed, entriesIn } from './entry-feed.ts';
import type { FeedEntry } from './feed-entry.ts';

/** A document of a feed of entries by JSON Feed 1.1 (jsonfeed.org/version/1.1), the newest first; older ones are at `next_url`. */
export function jsonFeed(feed: EntryFeed, context: FeedContext): string {
  const { site, to, archive, htmlOf } = context;
  const before = archiveBefore(feed, archive);
  const document = {
    version: 'https://jsonfeed.org/version/1.1',
    title: feed.title,
    home_page_url: to.absolute(feed.home),
    feed_url: to.absolute(to.feed('json', feed.project, archive)),
    description: feed.subtitle,
    next_url: before && to.absolute(to.feed('json', feed.project, before)),
    authors: [{ name: feed.author }],
    language: site.language,
    items: entriesIn(feed, archive).map((told) => jsonItem(told, htmlOf)),
  };
  return `${JSON.stringify(document, null, 1)}\n`;
}

function jsonItem(told: FeedEntry, htmlOf: FeedContext['htmlOf']): object {
  return {
    id: told.id,
    url: told.address,
    title: told.title,
    summary: told.summary,
    content_html: entryContent(told, htmlOf),
    language: told.language,
    date_published: told.at,
    date_modified: told.at,
    authors: [{ name: told.builder }],
    tags: [told.project.id, ...told.tags],
  };
}
