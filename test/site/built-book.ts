import { inject } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Book } from '../../src/book/types.ts';
import { type Page, readPages } from './pages.ts';

/** The demo site as built, and the book it was built from. */
export interface BuiltDemo {
  readonly book: Book;
  /** The page at an address below the site's root: `lapwing/costs/`. */
  page(path: string): Page;
}

/** Opens both. The day that counts as today lies after the demo's last row, whenever the tests run. */
export async function openBuiltDemo(): Promise<BuiltDemo> {
  const site = inject('site');
  const pages = new Map(readPages(site).map((page) => [page.url, page]));
  return {
    book: await openBook(site.content, { now: new Date('2027-01-01T12:00:00Z') }),
    page(path) {
      const page = pages.get(new URL(path, site.address).href);
      if (page === undefined) throw new Error(`the site has no page ${path}`);
      return page;
    },
  };
}
