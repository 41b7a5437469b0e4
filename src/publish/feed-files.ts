import type { Book } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';
import type { Addresses } from './address.ts';
import { atomFeed, type FeedContext } from './atom.ts';
import { archivesOf, projectFeed, siteFeed } from './entry-feed.ts';
import { jsonFeed } from './json-feed.ts';

/** A document of a feed, with its path on the host. */
export interface FeedFile {
  readonly path: string;
  readonly text: string;
}

/** Every document of the site's feed and of each project's, in both formats. */
export function feedFiles(
  book: Book,
  site: Site,
  context: { readonly to: Addresses; readonly htmlOf: FeedContext['htmlOf'] },
): readonly FeedFile[] {
  const { to, htmlOf } = context;
  const feeds = [
    siteFeed(book, site, to),
    ...book.projects.map((project) => projectFeed(project, site, to)),
  ];
  return feeds.flatMap((feed) => {
    const archives = Array.from({ length: archivesOf(feed) }, (_, index) => index + 1);
    return [undefined, ...archives].flatMap((archive) => [
      { path: feed.path('atom', archive), text: atomFeed(feed, { site, to, archive, htmlOf }) },
      { path: feed.path('json', archive), text: jsonFeed(feed, { site, to, archive, htmlOf }) },
    ]);
  });
}
