import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { moveFolder } from './scratch.ts';

/** The finished pages of one project, kept between runs. */
export interface Part {
  /** Holds `site/`, the project's files as they lie in the site, and `part.json`. */
  readonly folder: string;
  /** Text of each entry as feeds have it, by the path of its file. */
  readonly texts: Readonly<Record<string, string>>;
  /** Files of `assets/` that the pages may ask for. */
  readonly assets: readonly string[];
}

/** What of a part is noted beside its pages. */
export type PartNotes = Omit<Part, 'folder'>;

/** How many states of a project are kept: that of the last build, and one to go back to. */
const KEPT = 2;

/**
 * Parts under the name of all that went into them, in `<cacheDir>/parts/<project>/<key>`. Nothing in it depends on where it lies or on
 * who made it, so that several machines can share it; without it everything is made again.
 */
export class PartStore {
  readonly #folder: string;

  constructor(cacheDir: string) {
    this.#folder = join(cacheDir, 'parts');
  }

  /** The part of that name, if it is there. One that can't be read is none. */
  async find(id: string, key: string): Promise<Part | undefined> {
    const folder = join(this.#folder, id, key);
    try {
      const notes = JSON.parse(await readFile(join(folder, 'part.json'), 'utf8')) as PartNotes;
      const now = new Date();
      await utimes(folder, now, now).catch(() => {}); // A store that can't be written to can be read.
      return { folder, ...notes };
    } catch {
      return undefined;
    }
  }

  /** Takes in a folder of pages; it appears under its name only once it is whole. */
  async keep(id: string, key: string, pages: string, notes: PartNotes): Promise<Part> {
    const folder = join(this.#folder, id, key);
    const fresh = `${folder}.${process.pid}.new`;
    await rm(fresh, { recursive: true, force: true });
    await mkdir(fresh, { recursive: true });
    await moveFolder(pages, join(fresh, 'site'));
    await writeFile(join(fresh, 'part.json'), JSON.stringify(notes));
    await rm(folder, { recursive: true, force: true });
    await rename(fresh, folder);
    return { folder, ...notes };
  }

  /** Removes what no build has asked for lately: of each project all but the last states. */
  async prune(projects: readonly string[]): Promise<void> {
    for (const id of await namesIn(this.#folder)) {
      const folder = join(this.#folder, id);
      const kept = projects.includes(id) ? KEPT : 0;
      const names = (await namesIn(folder)).map(async (name) => ({
        path: join(folder, name),
        used: await stat(join(folder, name)).then(
          ({ mtimeMs }) => mtimeMs,
          () => 0,
        ),
      }));
      const byUse = (await Promise.all(names)).sort((a, b) => b.used - a.used);
      for (const { path } of byUse.slice(kept)) await rm(path, { recursive: true, force: true });
    }
  }
}

async function namesIn(folder: string): Promise<string[]> {
  return readdir(folder).catch(() => []);
}
