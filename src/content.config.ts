import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { contentDir } from './site/folders.ts';
import { pagesHere } from './site/pages-here.ts';

// Front matter has been read and checked by our own reader before a page is made; here only the text is wanted.
const entries = defineCollection({
  loader: loader(),
  schema: z.looseObject({}),
});

/** Texts of the projects whose pages are made in this run. */
function loader() {
  const projects = pagesHere() ?? ['*'];
  if (projects.length === 0) return async () => [];
  const pattern = projects.map((project) => `${project}/entries/*.mdx`);
  return glob({ base: contentDir, pattern, generateId: ({ entry }) => entry });
}

export const collections = { entries };
