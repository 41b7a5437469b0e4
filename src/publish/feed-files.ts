import { atomFeed, type FeedContext } from './atom.ts';
import { archivesOf, type EntryFeed } from './entry-feed.ts';
import { jsonFeed } from './json-feed.ts';

/** A document of a feed, with its path on the host. */
export interface FeedFile {
  readonly path: string;
  readonly text: string;
}

/** Every document of the feeds, in both formats. */
export function feedFiles(
  feeds: readonly EntryFeed[],
  context: Omit<FeedContext, 'archive'>,
): readonly FeedFile[] {
  const { to } = context;
  return feeds.flatMap((feed) => {
    const archives = Array.from({ length: archivesOf(feed) }, (_, index) => index + 1);
    return [undefined, ...archives].flatMap((archive) => [
      {
        path: to.feed('atom', feed.project, archive),
        text: atomFeed(feed, { ...context, archive }),
      },
      {
        path: to.feed('json', feed.project, archive),
        text: jsonFeed(feed, { ...context, archive }),
      },
    ]);
  });
}
