import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { RouteData } from 'astro';
import { StaticPaths, type StaticPathsApp } from 'astro/runtime/prerender/static-paths.js';
import { eachOf } from '../photo/each.ts';
import { type PageProgram, PROGRAM } from './page-program.ts';

/** What the program gives, and Astro itself starts it by. */
interface PageApp extends StaticPathsApp {
  setInternals(internals: { readonly pagesByKeys: ReadonlyMap<string, object> }): void;
  setOptions(options: object): void;
  render(request: Request, about: { readonly routeData: RouteData }): Promise<Response>;
}

/** Pages on their way to the disk, so that neither waits for the other. */
const AT_ONCE = { items: 4, weight: 4 };

/**
 * Makes the pages of some projects in a folder, or with none those that belong to no project. Once in a process, since the program reads
 * content but once. Throws with what a page says that breaks.
 */
export async function renderPages(
  { folder, entry, styles }: PageProgram,
  projects: readonly string[],
  target: string,
): Promise<void> {
  process.env.WITNESSMARK_PAGES = projects.join(' ');
  const start = pathToFileURL(join(folder, 'site', PROGRAM, entry));
  const { app }: { app: PageApp } = await import(start.href);
  app.setInternals({ pagesByKeys: new Map(styles) });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination: TELL } } });
  const { base, site } = app.manifest;
  const home = base.replace(/\/?$/, '/');
  const made = new Set<string>();
  await eachOf(
    await new StaticPaths(app).getAll(),
    AT_ONCE,
    () => 1,
    async ({ pathname, route }) => {
      const file = fileOf(pathname, route);
      if (made.has(file)) return; // Routes come in the order of their weight, and the first has the address.
      made.add(file);
      const path = file.replace(/index\.html$/, '').replace(/^404\.html$/, '404/');
      const url = new URL(`${home}${path}`, site);
      const response = await app.render(new Request(url), { routeData: route });
      if (response.status >= 300 && response.status < 400)
        throw new Error(`this is our bug: ${url.pathname} leads elsewhere`);
      await mkdir(dirname(join(target, file)), { recursive: true });
      await writeFile(join(target, file), Buffer.from(await response.arrayBuffer()));
    },
  );
}

/** Where a page lies in the site: pages are folders with an index, other files have their names. */
function fileOf(pathname: string, { type }: RouteData): string {
  const path = pathname.replace(/^\/|\/$/g, '');
  if (type === 'endpoint') return path;
  return path === '404' ? '404.html' : join(path, 'index.html');
}

/** Shows what Astro warns of. */
const TELL = {
  write: ({ level, message }: { level: string; message: string }) => {
    if (/warn|error/.test(level)) console.error(message);
  },
};
