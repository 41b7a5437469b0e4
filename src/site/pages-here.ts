import type { ReadContent } from '../read/content.ts';

/**
 * Projects whose pages this process makes, in `WITNESSMARK_PAGES` with spaces between. None of them: only the pages that belong to
 * no project. Undefined: all pages, as the dev server makes them.
 */
export function pagesHere(): readonly string[] | undefined {
  return process.env.WITNESSMARK_PAGES?.split(' ').filter((id) => id !== '');
}

/** Hands content over to pages that are made in this same process, so that it is not read twice; the bundler gives them modules of their own. */
export function handContent(content: ReadContent | undefined): void {
  hands.witnessmarkContent = content;
}

/** The content that was handed over, if any. */
export function handedContent(): ReadContent | undefined {
  return hands.witnessmarkContent;
}

const hands = globalThis as { witnessmarkContent?: ReadContent | undefined };
