import { spawn } from 'node:child_process';
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { benchPhotos } from '../bench/photos.ts';
import { openBook } from '../book/open.ts';
import { linesOf } from '../mark/marked-rows.ts';
import { forecastRecord } from '../plan/project-forecast.ts';
import { contentDir } from '../site/folders.ts';
import { parseMarks } from '../trust/parse-marks.ts';
import { publishLedger } from '../trust/publish.ts';
import { LEDGER_ROWS, writeLedger } from './bench-ledger.ts';

/** One thing measured, and what it should stay under. */
interface Timing {
  readonly what: string;
  readonly seconds: number;
  /** Most memory that the process held, in MB. */
  readonly peak?: number;
  readonly target: number | undefined;
}

/**
 * Times checking and building of the content folder in fresh temporary folders; the builder's own files are only read.
 * With `ledger`, times checking, marking and proving of a made-up ledger instead, with `photos` the making of photos.
 */
export async function main([what, ...rest]: readonly string[]): Promise<number> {
  if (what === 'photos') return benchPhotos(rest);
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-bench-'));
  const ofLedger = what === 'ledger';
  try {
    const timings = ofLedger ? await measureLedger(folder) : await measureAll(folder);
    const content = ofLedger ? `${LEDGER_ROWS} made-up rows` : `content of ${contentDir}`;
    console.log(`Node ${process.versions.node}, ${availableParallelism()} cores, ${content}\n`);
    for (const { what, seconds, peak, target } of timings) {
      const memory = peak === undefined ? '' : `${peak.toFixed(0).padStart(7)} MB`;
      const goal = target === undefined ? '' : `   target ${target.toFixed(1)} s`;
      console.log(`${what.padEnd(44)}${seconds.toFixed(2).padStart(7)} s${memory}${goal}`);
    }
    if (!ofLedger) console.log(`\n${await forecastsHeld()}`);
    return 0;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The targets are for 100,000 rows on two cores. */
async function measureLedger(folder: string): Promise<Timing[]> {
  const content = join(folder, 'content');
  await writeLedger(content);
  const env = { WITNESSMARK_CONTENT: content };
  return [
    { what: 'check, before any mark', ...(await runMeasured(['check'], env)), target: 6 },
    {
      what: 'mark, the check before it included',
      ...(await runMeasured(['mark'], env)),
      target: 9,
    },
    { what: 'check, all rows marked', ...(await runMeasured(['check'], env)), target: 6 },
    { what: 'proofs', seconds: await timeProofs(content), target: undefined },
  ];
}

/** Works out every file that is published for a marked ledger. */
async function timeProofs(content: string): Promise<number> {
  const folder = join(content, 'engine');
  const { marks } = parseMarks(await readFile(join(folder, 'marks.txt'), 'utf8'));
  const rows = linesOf(await readFile(join(folder, 'marked-rows.jsonl'), 'utf8'));
  const started = performance.now();
  publishLedger(rows, marks);
  return (performance.now() - started) / 1000;
}

/** How often the entries' forecasts of what is finished by now held its finish; they are meant to in 80 %. */
async function forecastsHeld(): Promise<string> {
  const { projects } = await openBook(contentDir, { now: new Date() });
  const records = projects.flatMap((project) => forecastRecord(project));
  const sum = (of: 'held' | 'missedEarly' | 'missedLate') =>
    records.reduce((total, record) => total + record[of], 0);
  const [held, early, late] = [sum('held'), sum('missedEarly'), sum('missedLate')];
  const all = held + early + late;
  const share = all === 0 ? '' : `, ${Math.round((100 * held) / all)} %`;
  return `forecasts that held the finish: ${held} of ${all}${share} (${late} passed, ${early} beaten)`;
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

/** Prints what a process held at most, in kilobytes, as its last line. */
const TELL_PEAK = `data:text/javascript,process.on('exit',()=>console.error(process.resourceUsage().maxRSS))`;

type Environment = Readonly<Record<string, string>>;

/** Runs a command in a process of its own; gives its seconds from start to end, start-up included. */
async function run(command: string, env: Environment): Promise<number> {
  return (await runMeasured([command], env)).seconds;
}

/** The same, with the most memory that the process held, in MB. */
async function runMeasured(
  args: readonly string[],
  env: Environment,
): Promise<{ seconds: number; peak: number }> {
  const started = performance.now();
  const child = spawn(process.execPath, ['--import', TELL_PEAK, 'src/cli/run.mjs', ...args], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let errors = '';
  child.stderr.on('data', (text: Buffer) => {
    errors += text;
  });
  const status = await new Promise<number | null>((resolve) => child.on('close', resolve));
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${errors}`);
  const seconds = (performance.now() - started) / 1000;
  return { seconds, peak: Number(errors.trim().split('\n').at(-1)) / 1024 };
}
