import { entryContent, type FeedContext } from './atom.ts';
import { contentLanguage } from './content-language.ts';
import { archiveBefore, type EntryFeed, entriesIn, entryId, type FeedEntry } from './entry-feed.ts';

/** A document of a feed of entries by JSON Feed 1.1 (jsonfeed.org/version/1.1), the newest first; older ones are at `next_url`. */
export function jsonFeed(feed: EntryFeed, context: FeedContext): string {
  const { site, to, archive } = context;
  const before = archiveBefore(feed, archive);
  const document = {
    version: 'https://jsonfeed.org/version/1.1',
    title: feed.title,
    home_page_url: to.absolute(feed.home),
    feed_url: to.absolute(feed.path('json', archive)),
    description: feed.subtitle,
    next_url: before && to.absolute(feed.path('json', before)),
    authors: [{ name: feed.author }],
    language: site.language,
    items: entriesIn(feed, archive).map((told) => jsonItem(told, context)),
  };
  return `${JSON.stringify(document, null, 1)}\n`;
}

function jsonItem(told: FeedEntry, context: FeedContext): object {
  const { project, entry, at } = told;
  const { site, to } = context;
  const language = contentLanguage(site, project, entry);
  return {
    id: entryId(told, site, to),
    url: to.absolute(to.entry(project, entry)),
    title: entry.title,
    summary: entry.summary,
    content_html: entryContent(told, context),
    language: language === site.language ? undefined : language,
    date_published: at,
    date_modified: at,
    authors: [{ name: project.info.builder ?? site.builder }],
    tags: [project.id, ...(entry.tags ?? [])],
  };
}
