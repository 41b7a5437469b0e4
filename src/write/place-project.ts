import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { checkContent } from '../check/check.ts';
import { readContent } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import { alone } from './alone.ts';
import { WRITE_FOLDER } from './lock.ts';
import { placeFile } from './place-file.ts';
import { syncFolder } from './swap-in.ts';

/** Files of a new project by their paths in its folder, and the site's own for a content folder without one. */
export interface NewProject {
  readonly files: Readonly<Record<string, string>>;
  readonly site: string;
}

/** Whether a project was placed, and the site's file with it; or why not. */
export type Placed =
  | { readonly siteWritten: boolean }
  | { readonly refused: string }
  | { readonly problems: readonly Problem[] };

/** Writes a project into a folder of its own, checks it there and moves it in whole; one that is there is never touched. */
export async function placeProject(
  contentDir: string,
  id: string,
  project: NewProject,
): Promise<Placed> {
  const result = await alone(contentDir, 'making a project', () =>
    placeAlone(contentDir, id, project),
  );
  return 'busy' in result ? { refused: result.busy } : result;
}

async function placeAlone(
  contentDir: string,
  id: string,
  { files, site }: NewProject,
): Promise<Placed> {
  const target = join(contentDir, id);
  if (existsSync(target)) return { refused: `There is ${target} already.` };
  const fresh = join(contentDir, WRITE_FOLDER, `project-${randomUUID()}`);
  try {
    for (const folder of ['entries', 'photos', 'receipts'])
      await mkdir(join(fresh, id, folder), { recursive: true });
    await writeFiles(fresh, { 'site.yaml': site });
    await writeFiles(join(fresh, id), files);
    const found = checkContent(await readContent(fresh), new Date());
    const problems = found.filter(({ level }) => level === 'error');
    if (problems.length > 0) return { problems };
    const siteWritten = await placeFile(join(fresh, 'site.yaml'), join(contentDir, 'site.yaml'));
    await rename(join(fresh, id), target);
    await syncFolder(contentDir);
    return { siteWritten };
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

async function writeFiles(folder: string, files: NewProject['files']): Promise<void> {
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text, { flush: true });
  }
}
