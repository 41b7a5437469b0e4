import { randomUUID } from 'node:crypto';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { alone } from './alone.ts';
import { WRITE_FOLDER } from './lock.ts';
import { wordsOf } from './next-id.ts';
import { placeFile } from './place-file.ts';
import { named, syncFolder } from './swap-in.ts';

/** Puts bytes into `photos/` or `receipts/` under a free name near the wanted one, and returns the name; nothing is ever overwritten. */
export async function keepFile(
  contentDir: string,
  project: string,
  folder: 'photos' | 'receipts',
  name: string,
  bytes: Uint8Array,
): Promise<string> {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(project)) throw new Error(`"${project}" is no project`);
  const kept = await alone(contentDir, 'keeping a file', async () => ({
    as: await keepAlone(contentDir, project, folder, name, bytes),
  }));
  if ('busy' in kept) throw new Error(kept.busy);
  return kept.as;
}

async function keepAlone(
  contentDir: string,
  project: string,
  folder: 'photos' | 'receipts',
  name: string,
  bytes: Uint8Array,
): Promise<string> {
  const home = join(contentDir, project, folder);
  const whole = join(contentDir, WRITE_FOLDER, `file-${randomUUID()}`);
  await mkdir(home, { recursive: true });
  try {
    await writeFile(whole, bytes, { flag: 'wx', flush: true }).catch(named(join(home, name)));
    for (let number = 1; ; number++) {
      const free = nameFor(name, folder, number);
      if (!(await placeFile(whole, join(home, free)))) continue;
      await syncFolder(home);
      return free;
    }
  } finally {
    await rm(whole, { force: true });
  }
}

/** A name that is plain everywhere, whatever path or signs it was sent with. */
function nameFor(name: string, folder: string, number: number): string {
  const base = name.replace(/^.*[\\/]/, '');
  const ending = extname(base)
    .toLowerCase()
    .replace(/[^.a-z0-9]/g, '');
  const stem = wordsOf(base.slice(0, base.length - extname(base).length)).slice(0, 80);
  const plain = stem.replace(/-$/, '') || folder.replace(/s$/, '');
  return `${number === 1 ? plain : `${plain}-${number}`}${ending === '.' ? '' : ending}`;
}
