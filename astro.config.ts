import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { defineConfig } from 'astro/config';
import { siteDir, workDir } from './src/site/folders.ts';
import { pagesHere } from './src/site/pages-here.ts';
import { aboutSite, refreshDerived } from './src/site/prepare.ts';
import { reloadOnContent } from './src/site/reload.ts';
import { writingHelp } from './src/site/writing/writing-help.ts';

const { address } = await aboutSite();
const { origin, pathname } = new URL(address);
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

/** Shows what `src/site/entry-content.ts` makes of an entry. */
const entryRenderer: AstroIntegration = {
  name: 'witnessmark-entries',
  hooks: {
    'astro:config:setup': ({ addRenderer }) =>
      addRenderer({ name: 'astro:jsx', serverEntrypoint: '@astrojs/mdx/server.js' }),
  },
};

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
  integrations: [entryRenderer, reloadOnContent(refreshDerived), writingHelp()],
  markdown: { syntaxHighlight: false },
  // Everything comes from the site itself, from files: no style and no script stands in a page.
  security: {
    csp: {
      directives: [...POLICY],
      styleDirective: { resources: ["'self'"] },
      scriptDirective: { resources: ["'self'"] },
    },
  },
  devToolbar: { enabled: false },
  vite: {
    // Not in node_modules, where builds at the same time would share it, and which may be closed to writing.
    cacheDir: join(workDir, 'vite'),
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: {
        // Every page names these files, so that short names make every page lighter.
        output: { assetFileNames: 'assets/[hash][extname]' },
      },
    },
  },
});
