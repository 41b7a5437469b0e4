import { type Page, select, textOf } from '../site/pages.ts';

/** A node of JSON-LD as any reader of JSON has it. */
export type Node = { readonly [key: string]: unknown };

/** Every block of structured data of some pages, with the page it stands on. */
export function structuredDataOf(pages: readonly Page[]): { file: string; data: Node }[] {
  return pages.flatMap(({ file, root }) =>
    select(root, 'script')
      .filter(({ attrs }) => attrs.some(({ value }) => value === 'application/ld+json'))
      .map((script) => ({ file, data: JSON.parse(textOf(script)) as Node })),
  );
}

/** Every text under a node that is an address of the site: of its pages and files, not of videos and of schema.org. */
export function addressesIn(value: unknown): string[] {
  if (typeof value === 'string')
    return /^https:/.test(value) && !/^https:\/\/(schema\.org|video\.example)/.test(value)
      ? [value]
      : [];
  return value && typeof value === 'object' ? Object.values(value).flatMap(addressesIn) : [];
}
