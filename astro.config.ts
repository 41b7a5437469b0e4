import { join } from 'node:path';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { entryModules } from './src/site/entry-modules.ts';
import { siteDir, workDir } from './src/site/folders.ts';
import { pagesHere } from './src/site/pages-here.ts';
import { aboutSite, refreshDerived } from './src/site/prepare.ts';
import { reloadOnContent } from './src/site/reload.ts';
import { writingHelp } from './src/site/writing/writing-help.ts';

const { address, words } = await aboutSite();
const { origin, pathname } = new URL(address);
const { footnotes } = words.general;
const building = pagesHere() !== undefined;

/** What a page may load, besides styles and scripts of the site's own. */
const POLICY = [
  "default-src 'none'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
] as const;

export default defineConfig({
  site: origin,
  base: pathname,
  outDir: process.env.WITNESSMARK_OUT ?? siteDir,
  // Holds derived files only. Astro's own picture pipeline is not used: it can publish an original.
  // A build puts them into the finished site itself.
  publicDir: join(workDir, building ? 'nothing' : 'public'),
  cacheDir: join(workDir, 'astro'),
  trailingSlash: 'always',
  build: { format: 'directory', assets: 'assets', inlineStylesheets: 'never', concurrency: 4 },
  integrations: [mdx(), reloadOnContent(refreshDerived), writingHelp()],
  markdown: {
    // The same parser reads entries for the check. Curly quotes are off: in a log full of inches 5/8" must stay as typed.
    processor: satteri({ features: { smartPunctuation: false, gfm: { footnotes } } }),
    syntaxHighlight: false,
  },
  // Everything comes from the site itself, from files: no style and no script stands in a page.
  security: {
    csp: {
      directives: [...POLICY],
      styleDirective: { resources: ["'self'"] },
      scriptDirective: { resources: ["'self'"] },
    },
  },
  devToolbar: { enabled: false },
  // One warning for every entry otherwise, about a directive that the MDX integration itself writes.
  vite: {
    // Not in node_modules, where builds at the same time would share it, and which may be closed to writing.
    cacheDir: join(workDir, 'vite'),
    plugins: [entryModules()],
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: {
        checks: { moduleLevelDirective: false },
        // Every page names these files, so that short names make every page lighter.
        output: { assetFileNames: 'assets/[hash][extname]' },
      },
    },
  },
});
