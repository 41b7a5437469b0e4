import { mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';

const CONFIG = `import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
export default {
  cacheDir: './cache',
  vite: { cacheDir: './cache/vite' },
  integrations: [mdx()],
  markdown: { processor: satteri({ features: { smartPunctuation: false } }), syntaxHighlight: false },
  devToolbar: { enabled: false },
};
`;

const COLLECTION = `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
const entries = defineCollection({
  loader: glob({ base: './entries', pattern: '*.mdx' }),
  schema: z.looseObject({}),
});
export const collections = { entries };
`;

/** Every page shows one entry; where there are more pages than entries, entries are shown again at other addresses. */
const page = (pages: number) => `---
import { getCollection, render } from 'astro:content';
export async function getStaticPaths() {
  const entries = await getCollection('entries');
  return Array.from({ length: ${pages} }, (_, index) => ({
    params: { page: \`\${Math.floor(index / entries.length)}/\${entries[index % entries.length].id}\` },
    props: { entry: entries[index % entries.length] },
  }));
}
const { entry } = Astro.props;
const { Content } = await render(entry);
---
<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>{entry.data.title}</title></head>
  <body><h1>{entry.data.title}</h1><p>{entry.data.summary}</p><Content /></body>
</html>
`;

/** Writes a bare Astro site of the same entries and as many pages, with the same Markdown processor and no ledger: what Astro alone takes. */
export async function writeBareSite(
  folder: string,
  { content, pages }: { content: string; pages: number },
): Promise<void> {
  await mkdir(join(folder, 'src/pages'), { recursive: true });
  await mkdir(join(folder, 'entries'));
  await symlink(resolve('node_modules'), join(folder, 'node_modules'));
  await writeFile(join(folder, 'package.json'), '{ "type": "module" }\n');
  await writeFile(join(folder, 'astro.config.mjs'), CONFIG);
  await writeFile(join(folder, 'src/content.config.ts'), COLLECTION);
  await writeFile(join(folder, 'src/pages/[...page].astro'), page(pages));
  for (const file of await readdir(content, { recursive: true })) {
    if (!/[\\/]entries[\\/][^\\/]+\.mdx$/.test(file)) continue;
    const text = await readFile(join(content, file), 'utf8');
    const [project = ''] = file.split(/[\\/]/);
    await writeFile(
      join(folder, 'entries', `${project}-${basename(file)}`),
      withoutComponents(text),
    );
  }
}

const TAG = /<\/?[A-Z]\w*(?:"[^"]*"|[^">])*>/g;

/** An entry with every component replaced by the words of its properties. */
function withoutComponents(text: string): string {
  return text.replaceAll(TAG, (tag) =>
    [...tag.matchAll(/"([^"]*)"/g)].map(([, words]) => words).join(' '),
  );
}
