import { parseAtomFeed } from 'feedsmith';
import { z } from 'zod';

const link = z.object({ rel: z.string(), href: z.string(), type: z.string() });
const authors = z.array(z.object({ name: z.string() })).default([]);
const text = z.string().default('');
const worded = z.object({ value: text }).default({ value: '' });
const item = z.object({
  id: text,
  title: worded,
  content: worded,
  published: text,
  updated: text,
  links: z.array(link).default([]),
  authors,
});
const atom = z.object({
  id: text,
  updated: text,
  links: z.array(link),
  authors,
  entries: z.array(item),
});

/** An Atom feed as a general reader of feeds sees it; what is not there is empty. */
export function readFeed(document: string): z.infer<typeof atom> {
  return atom.parse(parseAtomFeed(document));
}
