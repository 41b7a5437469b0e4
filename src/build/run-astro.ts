import { symlink } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { build } from 'astro';

/**
 * Makes pages in a scratch folder: those of some projects, or with none those that belong to no project. Gives the folder they are in.
 * Throws with what Astro says when a page breaks.
 */
export async function runAstro(projects: readonly string[], scratch: string): Promise<string> {
  const site = join(scratch, 'site');
  process.env.WITNESSMARK_PAGES = projects.join(' ');
  process.env.WITNESSMARK_OUT = site;
  // A root of its own, so that runs can go on side by side; Astro looks for its own modules from there.
  const root = join(scratch, 'root');
  await symlink(resolve('node_modules'), join(root, 'node_modules'), 'junction');
  await build({
    logLevel: 'warn',
    mode: 'production',
    root,
    configFile: relative(root, resolve('astro.config.ts')),
    srcDir: resolve('src'),
    cacheDir: join(root, 'astro'),
    vite: { cacheDir: join(root, 'vite') },
  });
  return site;
}
