import type { Entry, Project } from '../book/types.ts';
import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import { noonIn } from '../time/noon.ts';
import { tongueOf } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { contentLanguage } from './content-language.ts';
import { markOver, showMark } from './ledger-marks.ts';
import { firstAddressOf } from './moved.ts';

/** An entry in a feed: all that is told of it but its text. Plain data, which another process can be given. */
export interface FeedEntry {
  /** Path of its file inside the content folder; its text goes by it. */
  readonly file: string;
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly tags: readonly string[];
  readonly date: Day;
  /** Noon of its day where the machine stands: entries have a day and feeds want a time. */
  readonly at: string;
  readonly builder: string;
  /** Where it is not that of the site. */
  readonly language?: string | undefined;
  readonly project: { readonly id: string; readonly name: string };
  /** Its page, with the host. */
  readonly address: string;
  /** The page of the project's marks, with the host, where it has any. */
  readonly marks?: string | undefined;
  /** HTML that tells of the mark over its day; empty where there is none yet. */
  readonly marked: string;
}

/** What an entry is published with. */
interface Publishing {
  readonly site: Site;
  readonly to: Addresses;
}

/** What feeds tell of an entry. */
export function feedEntry(project: Project, entry: Entry, { site, to }: Publishing): FeedEntry {
  const language = contentLanguage(site, project, entry);
  return {
    file: entry.file,
    id: entryId(project, entry, { site, to }),
    title: entry.title,
    summary: entry.summary,
    tags: entry.tags ?? [],
    date: entry.date,
    at: noonIn(project.info.timeZone, entry.date),
    builder: project.info.builder ?? site.builder,
    language: language === site.language ? undefined : language,
    project: { id: project.id, name: project.info.name },
    address: to.absolute(to.entry(project, entry)),
    marks: project.marks && to.absolute(to.marks(project)),
    marked: markedLine(project, entry.date, { site, to }),
  };
}

/** The mark that closed over the rows of the entry's day; an entry since the newest mark has none yet. */
function markedLine(project: Project, day: Day, { site, to }: Publishing): string {
  const mark = markOver(project, day);
  if (mark === undefined) return '';
  const { words, tag } = tongueOf(site.language);
  const { feed } = words.log.sharing;
  const { rows, root, date } = showMark(mark, tag);
  const address = escapeXml(to.absolute(to.marks(project)));
  return `\n<p>${escapeXml(feed.marked(date))}: <a href="${address}">${escapeXml(feed.mark(rows, root))}</a></p>`;
}

/**
 * A tag URI (RFC 4151) of the host, the day and the file name that the entry was first published under: it stays the same
 * when the entry gets another title, another address, or another host.
 */
function entryId(project: Project, entry: Entry, { site, to }: Publishing): string {
  const now = to.entry(project, entry).slice(to.home().length);
  const first = firstAddressOf(now, site.moved ?? []);
  const [, of, slug, day] = /^([^/]+)\/log\/((\d{4}-\d\d-\d\d)[^/]*)\/$/.exec(first) ?? [];
  const { hostname } = new URL(site.firstAddress ?? site.address);
  return of && slug && day
    ? `tag:${hostname},${day}:${of}/${slug}`
    : `tag:${hostname},${entry.date}:${project.id}/${entry.slug}`;
}
