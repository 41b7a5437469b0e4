import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';
import { addressesOf } from '../publish/address.ts';
import { addressProblems, PUBLISHED } from '../publish/address-problems.ts';
import { sitePages } from '../publish/sitemap.ts';
import type { Problem } from '../read/problem.ts';
import { readYamlRecord } from '../read/yaml.ts';

/** Addresses inside the site of every page that a book makes. */
export function pagesInside(book: Book): ReadonlySet<string> {
  const to = addressesOf(book.site?.address ?? 'https://site.invalid/');
  return new Set(sitePages(book, to).map(({ path }) => path.slice(to.home().length)));
}

/**
 * Looks for addresses that vanished. Only a book without mistakes says which pages there are; it is opened only where there is
 * something to look for.
 */
export async function checkAddresses(
  contentDir: string,
  site: Site | undefined,
  open: () => Promise<Book>,
): Promise<Problem[]> {
  const moved = site?.moved ?? [];
  const published = await readKept(contentDir);
  if (moved.length === 0 && published === undefined) return [];
  const text = await readFile(join(contentDir, 'site.yaml'), 'utf8');
  const [record] = readYamlRecord(text, 'site.yaml').records;
  return addressProblems({
    pages: pagesInside(await open()),
    moved,
    published,
    placeOf: (index, field) =>
      record?.placeOf(['moved', index, field]) ?? { file: 'site.yaml', line: 1, column: 1 },
  });
}

/** The manifest of what was published, where one is kept. */
export async function readKept(contentDir: string): Promise<string | undefined> {
  try {
    return await readFile(join(contentDir, PUBLISHED), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}
