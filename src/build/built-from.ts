import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { contentDir, siteDir, workDir } from '../site/folders.ts';
import { writeDerived } from '../write/swap-in.ts';
import { wantedParts } from './find-parts.ts';
import { stateOf } from './part-key.ts';
import type { Ready } from './ready.ts';

/** What the site in a folder was built from: of each project the name of its pages. */
interface BuiltFrom {
  readonly site: string;
  readonly projects: Readonly<Record<string, string>>;
}

const FILE = join(workDir, 'built.json');

/** Notes what the site in use was built from. */
export async function noteBuilt({ asked }: Pick<Ready, 'asked'>): Promise<void> {
  const projects = Object.fromEntries(asked.map(({ id, key }) => [id, key]));
  const built: BuiltFrom = { site: siteDir, projects };
  await writeDerived(FILE, JSON.stringify(built));
}

/** Projects that the site in use does not show as they are now, or shows though they are gone; none where nobody knows what it was built from. */
export async function projectsBehind(ids: readonly string[]): Promise<readonly string[]> {
  const text = await readFile(FILE, 'utf8').catch(() => undefined);
  const built: BuiltFrom | undefined = text === undefined ? undefined : JSON.parse(text);
  if (built?.site !== siteDir) return [];
  const now = await wantedParts(ids, await stateOf(contentDir));
  const keys = new Map(now.map(({ id, key }) => [id, key]));
  const all = new Set([...keys.keys(), ...Object.keys(built.projects)]);
  return [...all].filter((id) => keys.get(id) !== built.projects[id]).sort();
}
