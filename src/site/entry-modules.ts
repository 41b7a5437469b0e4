import { join } from 'node:path';
import type { Plugin } from 'vite';
import { listContent } from '../read/files.ts';
import { contentDir } from './folders.ts';
import { pagesHere } from './pages-here.ts';

const ID = 'witnessmark:entry-texts';
const RESOLVED = `\0${ID}`;

/**
 * Gives pages the texts of entries: a module with a way to load each of the projects whose pages are made. Astro's own collections would
 * read all texts once more and keep them in a file, for what our own reader knows already.
 */
export function entryModules(): Plugin {
  return {
    name: 'witnessmark-entry-texts',
    resolveId: (id) => (id === ID ? RESOLVED : undefined),
    load: (id) => (id === RESOLVED ? listOfTexts() : undefined),
    configureServer(server) {
      server.watcher.on('all', (event, path) => {
        if (!/^(add|unlink)$/.test(event) || !path.endsWith('.mdx')) return;
        for (const { moduleGraph } of Object.values(server.environments)) {
          const list = moduleGraph.getModuleById(RESOLVED);
          if (list) moduleGraph.invalidateModule(list);
        }
      });
    },
  };
}

async function listOfTexts(): Promise<string> {
  const projects = pagesHere();
  const listed = await listContent(contentDir, projects ? { projects } : {});
  const lines = listed.projects
    .flatMap(({ entries }) => entries)
    .map(
      (file) =>
        `[${JSON.stringify(file)}, () => import(${JSON.stringify(join(contentDir, file))})]`,
    );
  return `export default new Map([\n${lines.join(',\n')}\n]);\n`;
}
