import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { contentDir } from './site/folders.ts';

// Front matter has been read and checked by our own reader before a page is made; here only the text is wanted.
const entries = defineCollection({
  loader: glob({ base: contentDir, pattern: '*/entries/*.mdx', generateId: ({ entry }) => entry }),
  schema: z.looseObject({}),
});

export const collections = { entries };
