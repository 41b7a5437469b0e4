import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { soundFiles } from '../check/sound-files.ts';
import { type Dirs, filesOf } from '../cli/run-command.ts';
import { calendarOf, eventOf } from '../import/rfc5545.ts';
import { type RunOptions, runProgram } from './run-program.ts';

/** Something that is killed while it writes. */
export interface Job {
  readonly program: readonly string[];
  /** What is run before, to make a folder in which it has something to do. */
  readonly before: readonly (readonly string[])[];
  readonly changes?: Readonly<Record<string, readonly [piece: string, instead: string] | string>>;
  /** Whether it makes derived files, which are told apart from what the builder wrote. */
  readonly derives?: boolean;
  /** Whether it is killed by time alone: what it writes is mostly not written by us. */
  readonly slow?: boolean;
  /** What it prints once it has done a thing that it would do a second time. */
  readonly done?: string;
}

const command = (name: string) => ['src/cli/run.mjs', name];
const add = (what: string) => [
  ...command('add'),
  ...['hours', '1:30', what, '--date', '2025-05-02', '--project', 'press'],
];
const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const SHOWN = [
  '<Tally />',
  '<Photo file="a.jpg" alt="The ram" caption="Out" />\n\n<Photo file="b.jpg" alt="A gib" caption="New" />',
] as const;

const TABLE = `- id: bank
  files: bank*.csv
  kind: costs
  columns: {date: Day, what: Text, amount: Sum}
  fixed: {phase: rebuild, category: tool}
`;
const CALENDAR = `- id: shop
  files: shop*.ics
  kind: hours
  rules:
    - {has: screw, set: {phase: rebuild, work: fit}}
`;

/** All that is killed, by a name for the report. */
export const jobs: Readonly<Record<string, Job>> = {
  add: { program: add('Scraped the slides'), before: [add('First of all')], done: 'h-004' },
  undo: {
    program: command('undo'),
    before: [add('One'), add('Two'), add('Three')],
    done: 'Taken back.',
  },
  mark: {
    program: [...command('mark'), 'press', '--date', '2025-06-01'],
    before: [[...command('mark'), 'press', '--date', '2025-05-01'], add('After the mark')],
  },
  table: {
    program: [...command('import'), 'HOME/bank-1.csv', '--project', 'press', '--write'],
    before: [add('Before it')],
    changes: { 'press/imports.yaml': TABLE },
  },
  calendar: {
    program: [...command('import'), 'HOME/shop-1.ics', '--project', 'press', '--write'],
    before: [add('Before it')],
    changes: { 'press/imports.yaml': CALENDAR },
  },
  pictures: {
    program: [...command('import'), 'HOME/camera', '--project', 'press', '--write'],
    before: [add('Before it')],
  },
  fix: {
    program: [...command('check'), '--fix'],
    before: [add('Before it')],
    changes: {
      'press/ledger/hours.csv': ['5:00,teardown', '5:00,teardwon'],
      'press/ledger/costs.csv': ['180,vehicle', '180,Vehicle'],
      'press/ledger/readings.csv': ['2025-03-02,as-found', '2 March 2025,as-found'],
    },
  },
  derive: { program: ['test/hardness/derive.ts'], before: [], derives: true },
  build: {
    program: command('build'),
    slow: true,
    before: [command('build')],
    derives: true,
    changes: { 'site.yaml': ['A shed and a press', 'A barn and a press'] },
  },
};

/** A folder in which a job can be done again and again from copies, and what comes of it when nobody ends it. */
export interface Scene {
  readonly home: string;
  /** What its files are before, after it, and after it is done twice. */
  readonly states: readonly Files[];
  readonly derived: Files;
  readonly ms: number;
  /** How many steps of writing it takes. */
  readonly steps: number;
}

export type Files = Readonly<Record<string, string>>;

/** Folders of a job in a home. */
export function dirsIn(home: string): Dirs {
  return { content: join(home, 'content'), dist: join(home, 'dist'), work: join(home, 'work') };
}

/** Files of a content folder but those in which commands note what they do. */
export async function contentOf(home: string, imported?: 'settled'): Promise<Files> {
  const files = Object.entries(await filesOf(join(home, 'content'))).filter(
    ([path]) => !path.startsWith('.witnessmark/'),
  );
  const list = join(home, 'content/press/imported.txt');
  if (imported && existsSync(list)) {
    // Lines of which the next import sees by the ledger whether they became rows.
    const text = (await readFile(list, 'utf8')).replace(/^\? /gm, '');
    files.push(['press/imported.txt', createHash('sha256').update(text).digest('hex')]);
  }
  return Object.fromEntries(files);
}

/** Derived files: the site, and those in the work folder that are not Astro's; a program it bundles names the folder it was made in. */
export async function derivedOf(home: string): Promise<Files> {
  const [site, work] = await Promise.all([
    filesOf(join(home, 'dist')),
    filesOf(join(home, 'work')),
  ]);
  return Object.fromEntries([
    ...Object.entries(site).map(([path, hash]) => [`dist/${path}`, hash]),
    // What an index holds are times.
    ...Object.entries(work)
      .filter(([path]) => !/^(astro|vite|cache\/programs)\//.test(path))
      .map(([path, hash]) => [`work/${path}`, path.endsWith('.json') ? 'there' : hash]),
  ]);
}

/** Makes the folder of a job, and does the job there in copies, once and twice. */
export async function sceneOf(job: Job, home: string): Promise<Scene> {
  await writeFiles(join(home, 'content'), await filesBefore());
  await writeInputs(home);
  for (const program of job.before) await wellRun(program, home);
  for (const [file, change] of Object.entries(job.changes ?? {}))
    await changeFile(home, file, change);
  const tried = `${home}-tried`;
  await copyHome(home, tried);
  const states = [await contentOf(tried)];
  const began = performance.now();
  const stepsTo = `${home}-steps`;
  await wellRun(job.program, tried, {
    killAt: job.slow ? undefined : 100_000,
    env: { STEPS_TO: stepsTo },
  });
  const ms = performance.now() - began;
  const steps = job.slow ? 0 : Number(await readFile(stepsTo, 'utf8'));
  states.push(await contentOf(tried));
  const derived = await derivedOf(tried);
  await wellRun(job.program, tried);
  states.push(await contentOf(tried));
  await rm(tried, { recursive: true });
  return { home, states, derived, ms, steps };
}

/** A copy with the times of the original, so that what is known of its files stays known. */
export async function copyHome(from: string, to: string): Promise<void> {
  await rm(to, { recursive: true, force: true });
  await cp(from, to, { recursive: true, preserveTimestamps: true });
}

async function wellRun(
  program: readonly string[],
  home: string,
  options: RunOptions = {},
): Promise<void> {
  const ran = await runProgram(program, home, options).ended;
  if (ran.status !== 0)
    throw new Error(`${program.join(' ')}: ${ran.status ?? ran.signal}\n${ran.out}${ran.err}`);
}

async function filesBefore(): Promise<Readonly<Record<string, string | Uint8Array>>> {
  const { 'press/photos/ram.jpg': _, ...press } = soundFiles;
  const other = Object.entries(press).filter(([path]) => /^press\/(project|phases)/.test(path));
  return {
    ...press,
    ...Object.fromEntries(other.map(([path, text]) => [path.replace('press/', 'lathe/'), text])),
    [ENTRY]: String(press[ENTRY]).replace(...SHOWN),
    'press/photos/a.jpg': await picture(640, 40),
    'press/photos/b.jpg': await picture(640, 200),
  };
}

/** What is imported, beside the content folder. */
async function writeInputs(home: string): Promise<void> {
  await writeFiles(home, {
    'bank-1.csv': `Day,Text,Sum\n2025-05-03,Files,-12.50\n2025-05-04,A vice,-80\n2025-05-05,Oil,-7.25\n`,
    'shop-1.ics': calendarOf(
      eventOf('DTSTART:20250304T180000\nDURATION:PT2H30M\nSUMMARY:A screw', '1@a'),
      eventOf('DTSTART:20250305T180000\nDURATION:PT1H\nSUMMARY:The screw again', '2@a'),
    ),
    'camera/IMG 1.JPG': await picture(320, 10),
    'camera/IMG 2.JPG': await picture(320, 60),
    'camera/IMG 3.JPG': await picture(320, 110),
  });
}

function picture(width: number, green: number): Promise<Buffer> {
  const background = { r: 120, g: green, b: 90 };
  return sharp({ create: { width, height: width / 2, channels: 3, background } })
    .jpeg()
    .toBuffer();
}

async function writeFiles(
  folder: string,
  files: Readonly<Record<string, string | Uint8Array>>,
): Promise<void> {
  for (const [path, bytes] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), bytes);
  }
}

async function changeFile(
  home: string,
  file: string,
  change: string | readonly [string, string],
): Promise<void> {
  const path = join(home, 'content', file);
  const text = typeof change === 'string' ? change : await replaced(path, change);
  await writeFile(path, text);
}

async function replaced(
  path: string,
  [piece, instead]: readonly [string, string],
): Promise<string> {
  const text = await readFile(path, 'utf8');
  if (!text.includes(piece)) throw new Error(`${path} does not hold "${piece}"`);
  return text.replace(piece, instead);
}
