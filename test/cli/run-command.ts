import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { type Changes, inContentFolder } from '../check/content-folder.ts';

/** The three folders that a command works with. */
export interface Dirs {
  readonly content: string;
  readonly dist: string;
  readonly work: string;
}

/** How a command ended, and what it said. */
export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Gives `use` a content folder (the sound project with changes) and places for a site and for work files. */
export function inWorkshop<Result>(
  changes: Changes,
  use: (dirs: Dirs) => Promise<Result>,
): Promise<Result> {
  return inContentFolder(changes, async (content) => {
    const home = await mkdtemp(join(tmpdir(), 'witnessmark-home-'));
    try {
      return await use({ content, dist: join(home, 'dist'), work: join(home, 'work') });
    } finally {
      await rm(home, { recursive: true, force: true });
    }
  });
}

/** Starts a command as the npm scripts do. */
export function startCommand(
  args: readonly string[],
  dirs: Dirs,
  node: string = process.execPath,
): { readonly child: ChildProcess; readonly ended: Promise<Ran> } {
  // Astro's dev server serves no pages where it believes itself inside a test.
  const { FORCE_COLOR: _, VITEST: __, ...env } = process.env;
  const child = spawn(node, ['src/cli/run.mjs', ...args], {
    env: {
      ...env,
      NO_COLOR: '1',
      NODE_ENV: 'production',
      WITNESSMARK_CONTENT: dirs.content,
      WITNESSMARK_DIST: dirs.dist,
      WITNESSMARK_WORK: dirs.work,
    },
  });
  const said = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    said.out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said.err += text;
  });
  const ended = new Promise<Ran>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, ...said }));
  });
  return { child, ended };
}

/** Runs a command to its end. */
export function runCommand(args: readonly string[], dirs: Dirs, node?: string): Promise<Ran> {
  return startCommand(args, dirs, node).ended;
}

/** Every file of a folder by its path, as a hash of its bytes; nothing for a folder that is not there. */
export async function filesOf(folder: string): Promise<Readonly<Record<string, string>>> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  const paths = items
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath, item.name));
  const entries = paths.sort().map(async (path) => {
    const hash = createHash('sha256').update(await readFile(path));
    return [relative(folder, path), hash.digest('hex')] as const;
  });
  return Object.fromEntries(await Promise.all(entries));
}
