import { addedSince } from '../book/added.ts';
import type { Book, Entry, Project } from '../book/types.ts';
import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import { showMoney } from '../money/money.ts';
import { showDuration } from '../time/duration.ts';
import { noonIn } from '../time/noon.ts';
import type { Addresses } from './address.ts';
import { type FeedItem, writeFeed } from './atom-document.ts';
import { markOver, showMark } from './ledger-marks.ts';

/**
 * All entries of all projects as an Atom feed (RFC 4287), the newest first.
 * An entry's id is a tag URI (RFC 4151) made of its day and file name, which are its address too.
 */
export function atomFeed(book: Book, site: Site, to: Addresses): string {
  const items = book.projects
    .flatMap((project) =>
      project.entries.map((entry) => ({
        project,
        entry,
        updated: noonIn(project.info.timeZone, entry.date),
      })),
    )
    .sort((a, b) => Date.parse(b.updated) - Date.parse(a.updated));
  const home = to.absolute(to.home());
  const head = {
    id: home,
    title: site.title,
    subtitle: site.tagline,
    language: site.language,
    updated: items[0]?.updated ?? '1970-01-01T12:00:00+00:00',
    author: site.builder,
    self: to.absolute(to.feed()),
    alternate: home,
  };
  return writeFeed(
    head,
    items.map((item) => feedItem(item, site, to)),
  );
}

interface Item {
  readonly project: Project;
  readonly entry: Entry;
  readonly updated: string;
}

function feedItem(item: Item, site: Site, to: Addresses): FeedItem {
  const { project, entry, updated } = item;
  const { builder } = project.info;
  const alternate = to.absolute(to.entry(project, entry));
  return {
    id: `tag:${new URL(site.address).hostname},${entry.date}:${project.id}/${entry.slug}`,
    title: entry.title,
    published: updated,
    updated,
    author: builder === site.builder ? undefined : builder,
    category: { term: project.id, label: project.info.name },
    alternate,
    related: project.marks && { title: 'Marks', href: to.absolute(to.marks(project)) },
    summary: entry.summary,
    content: content(item, site, to),
  };
}

/** The summary and the running totals as plain HTML, which any reader shows; the whole entry is one link away. */
function content({ project, entry }: Item, site: Site, to: Addresses): string {
  const address = escapeXml(to.absolute(to.entry(project, entry)));
  const view = project.asOf(entry.date);
  const added = addedSince(view, entry);
  const rows = [
    ['Hours', showDuration(added.hours.value), showDuration(view.hoursByPhase.total.value)],
    [
      'Money',
      showMoney(added.costs.value, site.language),
      showMoney(view.costsByCategory.total.value, site.language),
    ],
    ['Parts fitted', String(added.fitted.value), String(added.allFitted.value)],
    ['Readings', String(added.readings.value), String(added.allReadings.value)],
  ].map(
    (cells) =>
      `<tr>${cells.map((cell, index) => (index === 0 ? `<th>${cell}</th>` : `<td>${escapeXml(cell)}</td>`)).join('')}</tr>`,
  );
  return `<p>${escapeXml(entry.summary)}</p><table><thead><tr><th></th><th>This entry added</th><th>Running total</th></tr></thead><tbody>${rows.join('')}</tbody></table><p><a href="${address}">${escapeXml(entry.title)}</a></p>${marked({ project, entry }, site, to)}`;
}

/** The mark that closed over the rows of the entry's day; an entry since the newest mark has none yet. */
function marked({ project, entry }: Pick<Item, 'project' | 'entry'>, site: Site, to: Addresses) {
  const mark = markOver(project, entry.date);
  if (mark === undefined) return '';
  const { rows, root, date } = showMark(mark, site.language);
  const address = escapeXml(to.absolute(to.marks(project)));
  return `<p>Ledger marked ${escapeXml(date)}: <a href="${address}">${escapeXml(rows)}, root ${escapeXml(root)}</a></p>`;
}
