import { parseFragment } from 'parse5';
import { attribute, select } from '../site/pages.ts';
import { readFeed } from './read-feed.ts';

/** What RFC 4287 asks and a grammar can't see. */
export function breaches(document: string): string[] {
  const read = readFeed(document);
  const { entries } = read;
  const ids = entries.map(({ id }) => id);
  const instants = entries.map(({ updated }) => Date.parse(updated));
  const rules: Record<string, boolean> = {
    // 4.1.1: a feed has an author, unless all its entries have one.
    'no author': read.authors.length === 0 && entries.some((entry) => entry.authors.length === 0),
    // 4.2.6: an id is an IRI, and no relative one.
    'an id that is no IRI': [read.id, ...ids].some((id) => !/^[a-z][a-z0-9+.-]*:\S+$/i.test(id)),
    'two entries with one id': new Set(ids).size < ids.length,
    // 4.1.2: an entry without content has an alternate link.
    'neither content nor alternate': entries.some(
      ({ content, links }) => content.value === '' && !links.some(({ rel }) => rel === 'alternate'),
    ),
    // Readers show the content away from the site, where a relative address leads nowhere.
    'a relative address in the content': entries.some(({ content }) =>
      addressesIn(content.value).some((address) => !URL.canParse(address)),
    ),
    // 4.2.15: updated is the instant of the last significant change.
    'updated before published': entries.some(
      ({ published }, index) => Date.parse(published) > (instants[index] ?? 0),
    ),
    'a feed that is not as new as its newest entry':
      Date.parse(read.updated) !== Math.max(...instants),
  };
  return Object.keys(rules).filter((rule) => rules[rule]);
}

const addressesIn = (html: string) =>
  select(parseFragment(html), '*').flatMap((element) =>
    ['href', 'src'].flatMap((name) => attribute(element, name) ?? []),
  );
