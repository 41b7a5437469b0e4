import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { moveFolder } from './scratch.ts';

/** A folder that is kept between runs, with what is noted of it. */
export type Kept<Notes> = Notes & {
  /** Holds `site/`, files as they lie in the site, and `part.json`. */
  readonly folder: string;
};

/** How many states are kept under one id: that of the last build, and one to go back to. */
const KEPT = 2;

/** What a folder ends in until it is whole, and for how many milliseconds it may be another process's that is at work. */
const FRESH = '.new';
const AT_WORK = 3_600_000;

/**
 * Folders under the name of all that went into them, as `<id>/<key>`. Nothing in one depends on where it lies or on who made it, so that
 * several machines can share them; without them everything is made again.
 */
export class KeptFolders<Notes extends object> {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** The folder of that name, if it is there. One that can't be read is none. */
  async find(id: string, key: string): Promise<Kept<Notes> | undefined> {
    const folder = join(this.#folder, id, key);
    try {
      const notes = JSON.parse(await readFile(join(folder, 'part.json'), 'utf8')) as Notes;
      const now = new Date();
      await utimes(folder, now, now).catch(() => {}); // A store that can't be written to can be read.
      return { folder, ...notes };
    } catch {
      return undefined;
    }
  }

  /**
   * Takes in a folder of files; it appears under its name only once it is whole. Where another process was first, what it kept is given:
   * it holds the same, and may be in use.
   */
  async keep(id: string, key: string, site: string, notes: Notes): Promise<Kept<Notes>> {
    const folder = join(this.#folder, id, key);
    const fresh = `${folder}.${randomUUID()}${FRESH}`;
    await mkdir(fresh, { recursive: true });
    await moveFolder(site, join(fresh, 'site'));
    await writeFile(join(fresh, 'part.json'), JSON.stringify(notes));
    try {
      await rename(fresh, folder);
    } catch (error) {
      if (!existsSync(folder)) throw error;
      const found = await this.find(id, key);
      await rm(found ? fresh : folder, { recursive: true, force: true });
      if (found) return found;
      await rename(fresh, folder);
    }
    return { folder, ...notes };
  }

  /** Removes what no build has asked for lately: of each of these ids all but the last states, and all of others. */
  async prune(ids: readonly string[]): Promise<void> {
    for (const id of await namesIn(this.#folder)) {
      const folder = join(this.#folder, id);
      const kept = ids.includes(id) ? KEPT : 0;
      const names = (await namesIn(folder)).map(async (name) => ({
        path: join(folder, name),
        used: await stat(join(folder, name)).then(
          ({ mtimeMs }) => mtimeMs,
          () => 0,
        ),
      }));
      const byUse = (await Promise.all(names)).sort((a, b) => b.used - a.used);
      const whole = byUse.filter(({ path }) => !path.endsWith(FRESH));
      const left = byUse.filter(
        ({ path, used }) => path.endsWith(FRESH) && used < Date.now() - AT_WORK,
      );
      for (const { path } of [...whole.slice(kept), ...left])
        await rm(path, { recursive: true, force: true });
    }
  }
}

async function namesIn(folder: string): Promise<string[]> {
  return readdir(folder).catch(() => []);
}
