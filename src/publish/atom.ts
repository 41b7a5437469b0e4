import { addedSince } from '../book/added.ts';
import type { Book, Entry, Project } from '../book/types.ts';
import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import { showMoney } from '../money/money.ts';
import { showDuration } from '../time/duration.ts';
import { noonIn } from '../time/noon.ts';
import type { Addresses } from './address.ts';
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
  const updated = items[0]?.updated ?? '1970-01-01T12:00:00+00:00';
  const home = to.absolute(to.home());
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeXml(site.language)}">`,
    `  <id>${escapeXml(home)}</id>`,
    `  <title>${escapeXml(site.title)}</title>`,
    ...(site.tagline ? [`  <subtitle>${escapeXml(site.tagline)}</subtitle>`] : []),
    `  <updated>${updated}</updated>`,
    `  <author><name>${escapeXml(site.builder)}</name></author>`,
    `  <link rel="self" type="application/atom+xml" href="${escapeXml(to.absolute(to.feed()))}"/>`,
    `  <link rel="alternate" type="text/html" href="${escapeXml(home)}"/>`,
    ...items.map((item) => atomEntry(item, site, to)),
    '</feed>',
    '',
  ].join('\n');
}

interface Item {
  readonly project: Project;
  readonly entry: Entry;
  readonly updated: string;
}

function atomEntry({ project, entry, updated }: Item, site: Site, to: Addresses): string {
  const host = new URL(site.address).hostname;
  const address = escapeXml(to.absolute(to.entry(project, entry)));
  const builder = project.info.builder ?? site.builder;
  return [
    '  <entry>',
    `    <id>tag:${escapeXml(host)},${entry.date}:${project.id}/${entry.slug}</id>`,
    `    <title>${escapeXml(entry.title)}</title>`,
    `    <published>${updated}</published>`,
    `    <updated>${updated}</updated>`,
    ...(builder === site.builder
      ? []
      : [`    <author><name>${escapeXml(builder)}</name></author>`]),
    `    <category term="${project.id}" label="${escapeXml(project.info.name)}"/>`,
    `    <link rel="alternate" type="text/html" href="${address}"/>`,
    ...(project.marks
      ? [
          `    <link rel="related" type="text/html" title="Marks" href="${escapeXml(to.absolute(to.marks(project)))}"/>`,
        ]
      : []),
    `    <summary>${escapeXml(entry.summary)}</summary>`,
    `    <content type="html">${escapeXml(content({ project, entry, updated }, site, to))}</content>`,
    '  </entry>',
  ].join('\n');
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
