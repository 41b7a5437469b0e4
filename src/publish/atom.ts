import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import { tongueOf } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { type FeedItem, writeFeed } from './atom-document.ts';
import { contentLanguage } from './content-language.ts';
import {
  archiveBefore,
  archivesOf,
  type EntryFeed,
  entriesIn,
  entryId,
  type FeedEntry,
} from './entry-feed.ts';
import { markOver, showMark } from './ledger-marks.ts';

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
  const address = (of: number | undefined) => to.absolute(feed.path('atom', of));
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

function feedItem(told: FeedEntry, author: string, { site, to, htmlOf }: FeedContext): FeedItem {
  const { project, entry, at } = told;
  const builder = project.info.builder ?? site.builder;
  const language = contentLanguage(site, project, entry);
  const { feed } = tongueOf(site.language).words.log.sharing;
  return {
    id: entryId(told, site, to),
    title: entry.title,
    published: at,
    updated: at,
    author: builder === author ? undefined : builder,
    language: language === site.language ? undefined : language,
    category: { term: project.id, label: project.info.name },
    alternate: to.absolute(to.entry(project, entry)),
    related: project.marks && { title: feed.marks, href: to.absolute(to.marks(project)) },
    summary: entry.summary,
    content: entryContent(told, { site, to, htmlOf }),
  };
}

/** The summary, the entry as it stands on its page, and the mark over its rows. */
export function entryContent(told: FeedEntry, { site, to, htmlOf }: FeedContext): string {
  return `<p>${escapeXml(told.entry.summary)}</p>\n${htmlOf(told)}${marked(told, site, to)}`;
}

/** The mark that closed over the rows of the entry's day; an entry since the newest mark has none yet. */
function marked({ project, entry }: FeedEntry, site: Site, to: Addresses) {
  const mark = markOver(project, entry.date);
  if (mark === undefined) return '';
  const { words, tag } = tongueOf(site.language);
  const { feed } = words.log.sharing;
  const { rows, root, date } = showMark(mark, tag);
  const address = escapeXml(to.absolute(to.marks(project)));
  return `\n<p>${escapeXml(feed.marked(date))}: <a href="${address}">${escapeXml(feed.mark(rows, root))}</a></p>`;
}
