// A process of its own that makes the program which makes pages: Astro bundles pages, layouts and components, and renders none.
import { mkdir, readdir, rename, symlink } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { type AstroIntegration, build } from 'astro';
import { answerOnce } from './own-process.ts';
import { type BundleOrder, type PageNotes, PROGRAM } from './page-program.ts';

await answerOnce(async ({ scratch }: BundleOrder): Promise<PageNotes> => {
  const site = join(scratch, 'site');
  // A root of its own, so that runs can go on side by side; Astro looks for its own modules from there.
  const root = join(scratch, 'root');
  await mkdir(root);
  await symlink(resolve('node_modules'), join(root, 'node_modules'), 'junction');
  process.env.WITNESSMARK_OUT = site;
  process.env.WITNESSMARK_PAGES = '';
  let styles: Iterable<PageNotes['styles'][number]> = [];
  /** Takes the program away where Astro would start it. */
  const takeProgram: AstroIntegration = {
    name: 'witnessmark-take-program',
    hooks: {
      'astro:build:setup': ({ pages }) => {
        styles = pages; // Filled while it is bundled.
      },
      'astro:build:start': ({ setPrerenderer }) =>
        setPrerenderer({
          name: 'witnessmark-none',
          setup: () => rename(join(site, '.prerender'), join(site, PROGRAM)),
          getStaticPaths: async () => [],
          render: async () => new Response(),
        }),
    },
  };
  await build({
    logLevel: 'warn',
    mode: 'production',
    root,
    configFile: relative(root, resolve('astro.config.ts')),
    srcDir: resolve('src'),
    cacheDir: join(root, 'astro'),
    vite: { cacheDir: join(root, 'vite') },
    integrations: [takeProgram],
  });
  const entry = (await readdir(join(site, PROGRAM))).find((name) =>
    name.startsWith('prerender-entry'),
  );
  if (entry === undefined) throw new Error('this is our bug: the bundle has no entry');
  return { entry, styles: [...styles].map(([page, { styles }]) => [page, { styles }]) };
});
