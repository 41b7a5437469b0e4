import { execFile } from 'node:child_process';
import { appendFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs, promisify } from 'node:util';
import { workDir } from '../site/folders.ts';
import { sizeNamed } from './content/size.ts';
import { exponent, siteTable } from './site-table.ts';
import { type SiteTimes, timeSite } from './time-site.ts';

const HELP = `npm run bench [-- S M L] [--keep]
npm run bench -- content M FOLDER | ledger | photos

Times check and build of your content (S) and of made-up content: M is 50,000 rows and 1,000 entries, L six times as much and takes long, M/8 an eighth.
Each is built cold, with nothing changed, after one more row and after a changed reading, and beside it a bare Astro site of as many pages.
Without sizes it takes S and M. The numbers go to ${join('.witnessmark', 'bench.json')} too.
  --keep  adds them to test/bench/history.jsonl
`;

const HISTORY = 'test/bench/history.jsonl';

/** One run of the bench as it is written down. */
interface Run {
  readonly date: string;
  readonly commit: string;
  readonly cores: number;
  readonly node: string;
  /** Exponent of the cold build over records and pages. */
  readonly p: number | undefined;
  readonly sites: readonly SiteTimes[];
}

/** Measures the sizes asked for, in fresh temporary folders, and prints and writes what they took. */
export async function benchSite(args: readonly string[]): Promise<number> {
  const wanted = readArguments(args);
  if (wanted === undefined) {
    console.error(HELP);
    return 2;
  }
  console.log(`Node ${process.versions.node}, ${availableParallelism()} cores\n`);
  const measured = { date: new Date().toISOString(), commit: await commit() };
  const machine = { cores: availableParallelism(), node: process.versions.node };
  const sites: SiteTimes[] = [];
  const run = (): Run => ({
    ...{ ...measured, ...machine, sites },
    p: exponent(sites, ({ cold }) => cold.seconds),
  });
  for (const size of wanted.sizes) {
    sites.push(await inFreshFolder(size));
    // After each, since the next may take an hour or be broken off.
    await mkdir(workDir, { recursive: true });
    await writeFile(join(workDir, 'bench.json'), `${JSON.stringify(run(), undefined, 2)}\n`);
  }
  console.log(`\n${siteTable(sites)}`);
  if (wanted.keep) {
    await mkdir(dirname(HISTORY), { recursive: true });
    await appendFile(HISTORY, `${JSON.stringify(run())}\n`);
  }
  return 0;
}

async function inFreshFolder(size: string): Promise<SiteTimes> {
  const folder = await mkdtemp(join(tmpdir(), `witnessmark-bench-${size.replace('/', '-')}-`));
  const started = performance.now();
  const told = (what: string) =>
    console.log(`${size}: ${what}, after ${((performance.now() - started) / 1000).toFixed(0)} s`);
  try {
    return await timeSite(size, folder, told);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The commit that is measured, told apart from one with changes of its own. */
async function commit(): Promise<string> {
  const git = async (...args: string[]) => (await promisify(execFile)('git', args)).stdout.trim();
  const changed = await git('status', '--porcelain', '--untracked-files=no', '--', 'src');
  return (await git('rev-parse', '--short=12', 'HEAD')) + (changed === '' ? '' : ' changed');
}

function readArguments(args: readonly string[]): { sizes: string[]; keep: boolean } | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { keep: { type: 'boolean', default: false } },
    });
    if (!positionals.every((name) => name === 'S' || sizeNamed(name))) return undefined;
    return { sizes: positionals.length > 0 ? positionals : ['S', 'M'], keep: values.keep };
  } catch {
    return undefined;
  }
}
