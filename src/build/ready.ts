import type { Site } from '../model/kinds.ts';
import type { EntryFeed } from '../publish/entry-feed.ts';
import type { SearchedPage } from '../publish/search-page.ts';

/** A project whose pages are asked for. */
export interface WantedPart {
  readonly id: string;
  /** The name that its pages are kept under. */
  readonly key: string;
  /** How large its content is; pages are made in proportion. */
  readonly bytes: number;
}

/** What the finished site is told of, beside its pages. */
export interface ToldOutside {
  readonly site: Site;
  /** All projects. */
  readonly ids: readonly string[];
  /** How many entries they have. */
  readonly entries: number;
  readonly searched: readonly SearchedPage[];
  readonly feeds: readonly EntryFeed[];
  /** What no file of the site may say. */
  readonly secrets: readonly string[];
}

/**
 * What a build goes on with once the content is checked, its photos are made, its values drawn, and the pages that belong to no project
 * made. Plain data: all that was read stays behind, in a process that has ended.
 */
export interface Ready extends ToldOutside {
  /** Projects whose pages are asked for. */
  readonly asked: readonly WantedPart[];
  /** Those of them that have no pages yet. */
  readonly missing: readonly WantedPart[];
  /** Those of the missing ones whose pages were made beside those that belong to no project. */
  readonly beside: readonly WantedPart[];
  /** What the content's files looked like before they were read. */
  readonly before: readonly (readonly [path: string, stamp: string])[];
  /** Seconds of the stages so far. */
  readonly stages: Readonly<Record<string, number>>;
}
