import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inContentFolder } from '../check/content-folder.ts';
import { derived } from '../check/derived-files.ts';
import { markPress } from '../check/marked-content.ts';
import { differences } from './same-site.ts';

const run = promisify(execFile);

/** Where and when a command runs. */
interface Circumstances {
  /** Folder that holds a copy of the project, its content, its site and its work folder. */
  readonly home: string;
  readonly zone: string;
  readonly locale: string;
  /** How far the clock is off. */
  readonly days: number;
  readonly cores: number;
}

// Copies, so that no other build shares the folder in which Astro keeps its lists.
const SOURCES = ['src', 'components', 'astro.config.ts', 'package.json', 'tsconfig.json'];

const photo = (name: string) => `<Photo file="${name}.jpg" alt="Drawing" caption="The ${name}." />`;

const DRAFT = `---
title: Not yet told
date: 2025-04-14
phase: rebuild
summary: Half a thought.
draft: true
---

${photo('dial')}
`;

/** The sound project with all that is made in a way of its own: pictures, one of them edited, drawn values, a draft, marks. */
const content = {
  ...derived('formula: p/2', 'inputs: { p: ram-play }'),
  'press/photos/ram.jpg': await readFile('content/ostermoor/photos/headstock-dial.jpg'),
  'press/photos/dial.jpg': await readFile('content/ostermoor/photos/two-collars.jpg'),
  'press/photos.yaml': '- id: dial\n  file: dial.jpg\n  straighten: 2\n  nothing-to-hide: true\n',
  'press/entries/2025-04-13-the-ram-slides.mdx': [
    '<Tally />',
    `<Working of="half" />\n\n${photo('ram')}\n\n${photo('dial')}`,
  ],
  'press/entries/2025-04-14-not-yet.mdx': DRAFT,
} as const;

let root = '';
let here: Circumstances;
let elsewhere: Circumstances;

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'witnessmark-twice-'));
  here = { home: join(root, 'here'), zone: 'UTC', locale: 'C', days: 0, cores: 1 };
  elsewhere = {
    ...{ home: join(root, 'Bücher und Pläne/two presses'), zone: 'Pacific/Auckland' },
    ...{ locale: 'tr_TR.UTF-8', days: 200, cores: 7 },
  };
  await inContentFolder(content, async (folder) => {
    await markPress(folder, '2025-05-01');
    for (const { home } of [here, elsewhere]) {
      await mkdir(home, { recursive: true });
      for (const source of SOURCES) await cp(source, join(home, source), { recursive: true });
      await symlink(resolve('node_modules'), join(home, 'node_modules'));
      await cp(folder, join(home, 'content'), { recursive: true });
    }
  });
  await node(here, 'src/cli/run.mjs', 'build');
});

afterAll(() => rm(root, { recursive: true, force: true }));

/** Runs Node in the project of these circumstances; gives what it says. */
async function node(
  { home, zone, locale, days, cores }: Circumstances,
  ...args: readonly string[]
): Promise<string> {
  const { WITNESSMARK_CACHE: _, ...env } = process.env;
  const { stdout } = await run(process.execPath, args, {
    cwd: home,
    env: {
      ...env,
      NODE_ENV: 'production',
      NODE_OPTIONS: `--import ${pathToFileURL(resolve('test/site/elsewhere.ts'))}`,
      ELSEWHERE: `${days} ${cores}`,
      ...{ TZ: zone, LC_ALL: locale, LANG: locale, HOME: home, USER: `user-${cores}` },
      WITNESSMARK_CONTENT: join(home, 'content'),
      WITNESSMARK_DIST: join(home, 'dist'),
      WITNESSMARK_WORK: join(home, '.witnessmark'),
    },
  }).catch((error) => {
    throw new Error(`${error.stdout}${error.stderr}`);
  });
  return stdout;
}

const ASKED = `const { timeZone, locale } = Intl.DateTimeFormat().resolvedOptions();
const { availableParallelism, homedir } = await import('node:os');
const { readdirSync } = await import('node:fs');
const first = readdirSync('content/press/entries')[0];
console.log(JSON.stringify([timeZone, locale, availableParallelism(), homedir(), first, new Date().getTime() - Date.parse(process.argv[1]) > 15e9]));`;

describe('the same content', () => {
  it('is built in circumstances that do differ', async () => {
    const now = new Date().toISOString();
    const ask = async (where: Circumstances) =>
      JSON.parse(await node(where, '--input-type=module', '-e', ASKED, now));
    const [plain, far] = [await ask(here), await ask(elsewhere)];
    expect(plain.slice(0, 3)).toEqual(['UTC', 'en-US', 1]);
    expect(far.slice(0, 3)).toEqual(['Pacific/Auckland', 'tr-TR', 7]);
    for (const [index, value] of plain.entries()) expect(far[index]).not.toEqual(value);
  });

  it('gives the same bytes on another day, in another place, with other cores', async () => {
    await node(elsewhere, 'src/cli/run.mjs', 'build');
    const [one, other] = [join(here.home, 'dist'), join(elsewhere.home, 'dist')];
    expect(await differences(one, other)).toEqual([]);
    const kinds = ['index.html', 'feed.atom', 'photos', 'cards', 'find', 'assets', 'press'];
    expect(await readdir(one)).toEqual(expect.arrayContaining(kinds));
  });

  it('gives the same bytes when what was made before is there', async () => {
    const cold = join(root, 'cold');
    await cp(join(here.home, 'dist'), cold, { recursive: true });
    const said = await node(
      { ...here, zone: 'America/St_Johns', locale: 'de_DE.UTF-8', days: 30, cores: 3 },
      'src/cli/run.mjs',
      'build',
    );
    expect(said).not.toContain('Drew');
    expect(await differences(cold, join(here.home, 'dist'))).toEqual([]);
  });
});
