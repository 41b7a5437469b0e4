import { relative, resolve, sep } from 'node:path';
import type { Plugin } from 'vite';
import { listContent } from '../read/files.ts';
import { contentDir } from './folders.ts';

const LIST = 'astro:content-module-imports';
const OWN_LIST = '\0witnessmark:entries';

/**
 * Gives a build the list of its own entries. Astro keeps that list in `.astro/` of the project folder, whatever content folder a build
 * has, so that two builds at a time would read each other's.
 */
export function ownEntries(): Plugin {
  return {
    name: 'witnessmark-own-entries',
    apply: 'build',
    resolveId: {
      order: 'pre',
      async handler(id, importer) {
        if (id !== LIST) return undefined;
        const theirs = await this.resolve(id, importer, { skipSelf: true });
        return { ...theirs, id: OWN_LIST };
      },
    },
    load: (id) => (id === OWN_LIST ? listOfEntries() : undefined),
  };
}

async function listOfEntries(): Promise<string> {
  const { projects } = await listContent(contentDir);
  const lines = projects.flatMap(({ entries }) => entries).map(lineOf);
  return `export default new Map([\n${lines.join(',\n')}\n]);\n`;
}

function lineOf(entry: string): string {
  const file = relative(process.cwd(), resolve(contentDir, entry)).replaceAll(sep, '/');
  const query = new URLSearchParams({
    'astro:content-layer-deferred-module': '',
    fileName: file,
    astroContentModuleFlag: 'true',
  });
  const module = `astro:content-layer-deferred-module?${query}`;
  return `[${JSON.stringify(file)}, () => import(${JSON.stringify(module)})]`;
}
