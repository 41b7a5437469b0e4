import type { Book, Entry, Project } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';
import { noonIn } from '../time/noon.ts';
import type { Addresses, FeedKind } from './address.ts';
import { firstAddressOf } from './moved.ts';

/** An entry in a feed. */
export interface FeedEntry {
  readonly project: Project;
  readonly entry: Entry;
  /** Noon of its day where the machine stands: entries have a day and feeds want a time. */
  readonly at: string;
}

/** A feed of entries: of the whole site, or of one project. */
export interface EntryFeed {
  readonly title: string;
  readonly subtitle: string | undefined;
  readonly author: string;
  /** Path of the page that it follows. */
  readonly home: string;
  /** Oldest first. */
  readonly entries: readonly FeedEntry[];
  /** Where it is; `archive` counts from 1, the oldest. */
  path(kind: FeedKind, archive?: number): string;
}

/** Entries of an archive, and the fewest of the newest document: enough to catch up on, small enough to fetch often. */
export const ARCHIVED = 5;

/** All entries of all projects. */
export function siteFeed(book: Book, site: Site, to: Addresses): EntryFeed {
  return {
    title: site.title,
    subtitle: site.tagline,
    author: site.builder,
    home: to.home(),
    entries: inOrder(book.projects),
    path: (kind, archive) => to.feed(kind, undefined, archive),
  };
}

/** The entries of one project. */
export function projectFeed(project: Project, site: Site, to: Addresses): EntryFeed {
  return {
    title: `${project.info.name} · ${site.title}`,
    subtitle: project.info.summary,
    author: project.info.builder ?? site.builder,
    home: to.project(project),
    entries: inOrder([project]),
    path: (kind, archive) => to.feed(kind, project, archive),
  };
}

function inOrder(projects: readonly Project[]): readonly FeedEntry[] {
  return projects
    .flatMap((project) =>
      project.entries.map((entry) => ({
        project,
        entry,
        at: noonIn(project.info.timeZone, entry.date),
      })),
    )
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
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

/**
 * A tag URI (RFC 4151) of the host, the day and the file name that the entry was first published under: it stays the same
 * when the entry gets another title, another address, or another host.
 */
export function entryId({ project, entry }: FeedEntry, site: Site, to: Addresses): string {
  const now = to.entry(project, entry).slice(to.home().length);
  const first = firstAddressOf(now, site.moved ?? []);
  const [, of, slug, day] = /^([^/]+)\/log\/((\d{4}-\d\d-\d\d)[^/]*)\/$/.exec(first) ?? [];
  const { hostname } = new URL(site.firstAddress ?? site.address);
  return of && slug && day
    ? `tag:${hostname},${day}:${of}/${slug}`
    : `tag:${hostname},${entry.date}:${project.id}/${entry.slug}`;
}
