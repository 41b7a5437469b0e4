// A process of its own that makes the program which makes pages: Astro bundles pages, layouts and components, and renders none.
import { readdir, rename, symlink } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { type AstroIntegration, build } from 'astro';
import { type PageNotes, PROGRAM } from './page-program.ts';

const [scratch = ''] = process.argv.slice(2);
const site = join(scratch, 'site');
// A root of its own, so that runs can go on side by side; Astro looks for its own modules from there.
const root = join(scratch, 'root');
process.env.WITNESSMARK_OUT = site;
process.env.WITNESSMARK_PAGES = '';
// Where the build has ended, nobody waits.
process.once('disconnect', () => process.exit());

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

const told = await bundle();
// The way to the build is closed once all has gone through it.
process.send?.(told, () => process.disconnect());

async function bundle(): Promise<PageNotes | { readonly failure: string }> {
  try {
    await symlink(resolve('node_modules'), join(root, 'node_modules'), 'junction');
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
    const names = await readdir(join(site, PROGRAM));
    return {
      entry: names.find((name) => name.startsWith('prerender-entry')) ?? 'no entry',
      styles: [...styles].map(([page, { styles }]) => [page, { styles }]),
    };
  } catch (error) {
    return { failure: (error as Error).message };
  }
}
