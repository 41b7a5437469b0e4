import { spawn } from 'node:child_process';
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { benchPhotos } from '../bench/photos.ts';
import { contentDir } from '../site/folders.ts';

/** One thing measured, and what it should stay under. */
interface Timing {
  readonly what: string;
  readonly seconds: number;
  readonly target: number | undefined;
}

/** Times checking and building of the content folder in fresh temporary folders, or with `photos` the making of photos; the builder's own files are only read. */
export async function main([what, ...rest]: readonly string[]): Promise<number> {
  if (what === 'photos') return benchPhotos(rest);
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-bench-'));
  try {
    const timings = await measureAll(folder);
    console.log(
      `Node ${process.versions.node}, ${availableParallelism()} cores, content of ${contentDir}\n`,
    );
    for (const { what, seconds, target } of timings) {
      const goal = target === undefined ? '' : `   target ${target.toFixed(1)} s`;
      console.log(`${what.padEnd(44)}${seconds.toFixed(2).padStart(7)} s${goal}`);
    }
    return 0;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function measureAll(folder: string): Promise<Timing[]> {
  const plain = join(folder, 'without-photos');
  await copyWithoutPhotos(plain);
  const at = (content: string, name: string) => ({
    WITNESSMARK_CONTENT: content,
    WITNESSMARK_WORK: join(folder, `${name}-work`),
    WITNESSMARK_DIST: join(folder, `${name}-dist`),
  });
  const checks = [await run('check', {}), await run('check', {}), await run('check', {})];
  return [
    { what: 'check (best of three)', seconds: Math.min(...checks), target: 1.5 },
    {
      what: 'build, cold, without photos',
      seconds: await run('build', at(plain, 'plain')),
      target: 15,
    },
    {
      what: 'build, warm, without photos',
      seconds: await run('build', at(plain, 'plain')),
      target: undefined,
    },
    {
      what: 'build, cold, with photos',
      seconds: await run('build', at(contentDir, 'full')),
      target: undefined,
    },
    {
      what: 'build, warm, with photos',
      seconds: await run('build', at(contentDir, 'full')),
      target: undefined,
    },
  ];
}

/** The same content with every photo taken out of its entries. */
async function copyWithoutPhotos(copy: string): Promise<void> {
  await cp(contentDir, copy, {
    recursive: true,
    filter: (path) => !/[\\/]photos([\\/]|$)/.test(path),
  });
  for (const item of await readdir(copy, { recursive: true, withFileTypes: true })) {
    if (!item.name.endsWith('.mdx')) continue;
    const file = join(item.parentPath, item.name);
    await writeFile(file, (await readFile(file, 'utf8')).replaceAll(/<Photo\b[\s\S]*?\/>/g, ''));
  }
}

/** Runs a command in a process of its own; gives its seconds from start to end, start-up included. */
async function run(command: string, env: Readonly<Record<string, string>>): Promise<number> {
  const started = performance.now();
  const child = spawn(process.execPath, ['src/cli/run.mjs', command], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let errors = '';
  child.stderr.on('data', (text: Buffer) => {
    errors += text;
  });
  const status = await new Promise<number | null>((resolve) => child.on('close', resolve));
  if (status !== 0) throw new Error(`${command} ended with ${status}: ${errors}`);
  return (performance.now() - started) / 1000;
}
