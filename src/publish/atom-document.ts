import { escapeXml } from '../draw/svg.ts';

/** What an Atom feed says of itself. Texts are plain; addresses are whole. */
export interface FeedHead {
  readonly id: string;
  readonly title: string;
  readonly subtitle?: string | undefined;
  readonly language: string;
  readonly updated: string;
  readonly author: string;
  /** Where the feed is. */
  readonly self: string;
  /** The page that it follows. */
  readonly alternate: string;
  /** Whether it is an archive, which does not change any more (RFC 5005 §4). */
  readonly archived?: boolean;
  /** Other documents of the same feed. */
  readonly links?: readonly { readonly rel: string; readonly href: string }[];
}

/** One entry of a feed. */
export interface FeedItem {
  readonly id: string;
  readonly title: string;
  readonly published: string;
  readonly updated: string;
  /** Named where it is not the author of the feed. */
  readonly author?: string | undefined;
  /** Language of its texts, where it is not that of the feed. */
  readonly language?: string | undefined;
  readonly category: { readonly term: string; readonly label: string };
  readonly alternate: string;
  /** A page beside it. */
  readonly related?: { readonly title: string; readonly href: string } | undefined;
  readonly summary: string;
  /** HTML. */
  readonly content: string;
}

/** Writes an Atom document (RFC 4287). */
export function writeFeed(head: FeedHead, items: readonly FeedItem[]): string {
  const { subtitle, archived = false, links = [] } = head;
  const history = archived ? ' xmlns:fh="http://purl.org/syndication/history/1.0"' : '';
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeXml(head.language)}"${history}>`,
    `  <id>${escapeXml(head.id)}</id>`,
    `  <title>${escapeXml(head.title)}</title>`,
    ...(subtitle ? [`  <subtitle>${escapeXml(subtitle)}</subtitle>`] : []),
    `  <updated>${head.updated}</updated>`,
    `  <author><name>${escapeXml(head.author)}</name></author>`,
    `  <link rel="self" type="application/atom+xml" href="${escapeXml(head.self)}"/>`,
    `  <link rel="alternate" type="text/html" href="${escapeXml(head.alternate)}"/>`,
    ...links.map(
      ({ rel, href }) =>
        `  <link rel="${rel}" type="application/atom+xml" href="${escapeXml(href)}"/>`,
    ),
    ...(archived ? ['  <fh:archive/>'] : []),
    ...items.map(writeItem),
    '</feed>',
    '',
  ].join('\n');
}

function writeItem(item: FeedItem): string {
  const { author, language, category, related } = item;
  return [
    language ? `  <entry xml:lang="${escapeXml(language)}">` : '  <entry>',
    `    <id>${escapeXml(item.id)}</id>`,
    `    <title>${escapeXml(item.title)}</title>`,
    `    <published>${item.published}</published>`,
    `    <updated>${item.updated}</updated>`,
    ...(author ? [`    <author><name>${escapeXml(author)}</name></author>`] : []),
    `    <category term="${category.term}" label="${escapeXml(category.label)}"/>`,
    `    <link rel="alternate" type="text/html" href="${escapeXml(item.alternate)}"/>`,
    ...(related
      ? [
          `    <link rel="related" type="text/html" title="${escapeXml(related.title)}" href="${escapeXml(related.href)}"/>`,
        ]
      : []),
    `    <summary>${escapeXml(item.summary)}</summary>`,
    `    <content type="html">${escapeXml(item.content)}</content>`,
    '  </entry>',
  ].join('\n');
}
