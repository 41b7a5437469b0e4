import { z } from 'zod';

const address = z.string().refine((text) => URL.canParse(text), 'is no whole address');
const authors = z
  .array(z.looseObject({ name: z.string().optional(), url: address.optional() }))
  .refine((list) => list.every(({ name, url }) => name ?? url), 'an author says nothing');
// RFC 3339 §5.6, as JSON Feed asks for dates.
const moment = z.iso.datetime({ offset: true });

/** JSON Feed 1.1 as its specification has it (jsonfeed.org/version/1.1): required fields, types, names of further objects. */
const jsonFeed = z
  .object({
    version: z.literal('https://jsonfeed.org/version/1.1'),
    title: z.string().min(1),
    home_page_url: address,
    feed_url: address,
    next_url: address.optional(),
    description: z.string().optional(),
    language: z.string().optional(),
    authors: authors.optional(),
    items: z.array(
      z
        .object({
          id: z.string().min(1),
          url: address.optional(),
          title: z.string().optional(),
          summary: z.string().optional(),
          content_html: z.string().optional(),
          content_text: z.string().optional(),
          date_published: moment.optional(),
          date_modified: moment.optional(),
          authors: authors.optional(),
          tags: z.array(z.string()).optional(),
        })
        .strict()
        .refine((item) => item.content_html ?? item.content_text, 'has no content'),
    ),
  })
  .strict()
  .refine(({ items }) => new Set(items.map(({ id }) => id)).size === items.length, 'an id twice')
  .refine(({ feed_url, next_url }) => feed_url !== next_url, 'is its own next page');

/** What JSON Feed 1.1 asks and a document does not do. */
export function jsonFeedErrors(document: unknown): string[] {
  const { error } = jsonFeed.safeParse(document);
  return (error?.issues ?? []).map(({ path, message }) => `${path.join('.')}: ${message}`);
}
