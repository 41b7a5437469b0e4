import type { Book, Project } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';
import type { Addresses } from './address.ts';
import { type FeedEntry, feedEntry } from './feed-entry.ts';

/** A feed of entries: of the whole site, or of one project. */
export interface EntryFeed {
  /** The project; the whole site without. */
  readonly project?: { readonly id: string } | undefined;
  readonly title: string;
  readonly subtitle?: string | undefined;
  readonly author: string;
  /** Path of the page that it follows. */
  readonly home: string;
  /** Oldest first. */
  readonly entries: readonly FeedEntry[];
}

/** Entries of an archive, and the fewest of the newest document: enough to catch up on, small enough to fetch often. */
export const ARCHIVED = 5;

/** The site's feed, and each project's. */
export function entryFeeds(book: Book, site: Site, to: Addresses): readonly EntryFeed[] {
  const feeds = book.projects.map((project) => projectFeed(project, site, to));
  return [siteFeed(feeds, site, to), ...feeds];
}

/** All entries of all projects. */
function siteFeed(feeds: readonly EntryFeed[], site: Site, to: Addresses): EntryFeed {
  return {
    title: site.title,
    subtitle: site.tagline,
    author: site.builder,
    home: to.home(),
    entries: inOrder(feeds.flatMap(({ entries }) => entries)),
  };
}

/** The entries of one project. */
function projectFeed(project: Project, site: Site, to: Addresses): EntryFeed {
  return {
    project: { id: project.id },
    title: `${project.info.name} · ${site.title}`,
    subtitle: project.info.summary,
    author: project.info.builder ?? site.builder,
    home: to.project(project),
    entries: inOrder(project.entries.map((entry) => feedEntry(project, entry, { site, to }))),
  };
}

function inOrder(entries: readonly FeedEntry[]): readonly FeedEntry[] {
  return [...entries].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

/** How many archives a feed has: whole ones only, so that one stays as it is once it is there. */
export function archivesOf({ entries }: EntryFeed): number {
  return Math.max(0, Math.floor(entries.length / ARCHIVED) - 1);
}

/** The entries of an archive, or of the newest document, newest first. */
export function entriesIn(feed: EntryFeed, archive: number | undefined): readonly FeedEntry[] {
  const first = (archive ?? archivesOf(feed) + 1) - 1;
  const end = archive === undefined ? undefined : archive * ARCHIVED;
  return feed.entries.slice(first * ARCHIVED, end).reverse();
}

/** The archive before this document, where there is one. */
export function archiveBefore(feed: EntryFeed, archive: number | undefined): number | undefined {
  const before = (archive ?? archivesOf(feed) + 1) - 1;
  return before > 0 ? before : undefined;
}
