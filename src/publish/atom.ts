import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import { tongueOf } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { type FeedItem, writeFeed } from './atom-document.ts';
import { archiveBefore, archivesOf, type EntryFeed, entriesIn } from './entry-feed.ts';
import type { FeedEntry } from './feed-entry.ts';

/** What a feed is written with. */
export interface FeedContext {
  readonly site: Site;
  readonly to: Addresses;
  /** The text of an entry as HTML that can be shown anywhere. */
  htmlOf(told: FeedEntry): string;
  /** The archive to write; the newest document without. */
  readonly archive?: number | undefined;
}

/** A document of a feed of entries in Atom (RFC 4287), the newest entry first; archives by RFC 5005 §4. */
export function atomFeed(feed: EntryFeed, context: FeedContext): string {
  const { site, to, archive } = context;
  const told = entriesIn(feed, archive);
  const home = to.absolute(feed.home);
  const address = (of: number | undefined) => to.absolute(to.feed('atom', feed.project, of));
  const before = archiveBefore(feed, archive);
  const head = {
    id: home,
    title: feed.title,
    subtitle: feed.subtitle,
    language: site.language,
    updated: told[0]?.at ?? '1970-01-01T12:00:00+00:00',
    author: feed.author,
    self: address(archive),
    alternate: home,
    archived: archive !== undefined,
    links: [
      ...(archive === undefined ? [] : [{ rel: 'current', href: address(undefined) }]),
      ...(before === undefined ? [] : [{ rel: 'prev-archive', href: address(before) }]),
      ...(archive !== undefined && archive < archivesOf(feed)
        ? [{ rel: 'next-archive', href: address(archive + 1) }]
        : []),
    ],
  };
  return writeFeed(
    head,
    told.map((item) => feedItem(item, feed.author, context)),
  );
}

function feedItem(told: FeedEntry, author: string, { site, htmlOf }: FeedContext): FeedItem {
  const { feed } = tongueOf(site.language).words.log.sharing;
  return {
    id: told.id,
    title: told.title,
    published: told.at,
    updated: told.at,
    author: told.builder === author ? undefined : told.builder,
    language: told.language,
    category: { term: told.project.id, label: told.project.name },
    alternate: told.address,
    related: told.marks === undefined ? undefined : { title: feed.marks, href: told.marks },
    summary: told.summary,
    content: entryContent(told, htmlOf),
  };
}

/** The summary, the entry as it stands on its page, and the mark over its rows. */
export function entryContent(told: FeedEntry, htmlOf: FeedContext['htmlOf']): string {
  return `<p>${escapeXml(told.summary)}</p>\n${htmlOf(told)}${told.marked}`;
}
