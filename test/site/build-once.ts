import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import type { TestProject } from 'vitest/node';
import { correctedFiles } from './corrected-files.ts';
import { plantSecrets } from './plant.ts';

/** A site built for the tests. */
export interface BuiltSite {
  /** The built site. */
  readonly folder: string;
  /** The content folder it was built from. */
  readonly content: string;
  /** Its public address. */
  readonly address: string;
  /** Secrets in the content that no file of the site may hold. */
  readonly secrets: readonly string[];
}

declare module 'vitest' {
  export interface ProvidedContext {
    /** The demo, built from a copy with secrets planted in it. */
    site: BuiltSite;
    /** One project of it, published in a folder of a host. */
    siteInFolder: BuiltSite;
    /** A small project with corrections of every kind that shows on a page. */
    correctedSite: BuiltSite;
    /** Pages in German around a project that is written in English and one in Arabic. */
    germanSite: BuiltSite;
    /** The demo in the pseudo-language, which puts every word of ours in brackets. */
    bracketedSite: BuiltSite;
  }
}

const IN_FOLDER = 'https://x.example/y/';

/** Builds what the tests look at, once and before any of them: two builds at a time would share Astro's own work files. */
export default async function buildOnce(project: TestProject): Promise<() => Promise<void>> {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-site-'));
  try {
    const content = join(home, 'demo/content');
    await cp('content', content, { recursive: true });
    const secrets = await plantSecrets(content);
    // Marked after the planting: what is planted is under the marks too.
    await command('demo-marks', { WITNESSMARK_CONTENT: content });
    const siteYaml = await readFile(join(content, 'site.yaml'), 'utf8');
    const address = /^address: (\S+)$/m.exec(siteYaml)?.[1] ?? '';
    project.provide('site', await build(join(home, 'demo'), { content, address, secrets }));

    const one = join(home, 'one/content');
    await mkdir(one, { recursive: true });
    await cp(join(content, 'ostermoor'), join(one, 'ostermoor'), { recursive: true });
    await writeFile(join(one, 'site.yaml'), siteYaml.replace(address, IN_FOLDER));
    const inFolder = { content: one, address: IN_FOLDER, secrets };
    project.provide('siteInFolder', await build(join(home, 'one'), inFolder));
    project.provide('correctedSite', await buildCorrected(join(home, 'corrected')));
    project.provide('germanSite', await buildGerman(join(home, 'german'), content));
    project.provide('bracketedSite', await buildBracketed(join(home, 'bracketed'), content));
  } catch (error) {
    await rm(home, { recursive: true, force: true });
    throw error;
  }
  return () => rm(home, { recursive: true, force: true });
}

async function buildCorrected(home: string): Promise<BuiltSite> {
  const content = join(home, 'content');
  for (const [file, text] of Object.entries(correctedFiles)) {
    await mkdir(dirname(join(content, file)), { recursive: true });
    await writeFile(join(content, file), text);
  }
  return build(home, { content, address: 'https://shed.example/', secrets: [] });
}

async function buildGerman(home: string, demo: string): Promise<BuiltSite> {
  const content = join(home, 'content');
  const address = 'https://werkstatt.example/';
  await mkdir(content, { recursive: true });
  await cp(join(demo, 'ostermoor'), join(content, 'ostermoor'), { recursive: true });
  for (const [file, text] of Object.entries(correctedFiles))
    if (file.startsWith('press/')) {
      await mkdir(dirname(join(content, file)), { recursive: true });
      await writeFile(join(content, file), text);
    }
  for (const [project, language] of [
    ['ostermoor', 'en-GB'],
    ['press', 'ar'],
  ] as const) {
    const file = join(content, project, 'project.yaml');
    await writeFile(file, `language: ${language}\n${await readFile(file, 'utf8')}`);
  }
  await writeFile(
    join(content, 'site.yaml'),
    `title: Bank und Scheune\naddress: ${address}\nlanguage: de-DE\nbuilder: Ines Marlow\n`,
  );
  return build(home, { content, address, secrets: [] });
}

/** Takes the demo's pictures from its build: only words differ. */
async function buildBracketed(home: string, demo: string): Promise<BuiltSite> {
  const content = join(home, 'content');
  await cp(demo, content, { recursive: true });
  const file = join(content, 'site.yaml');
  const text = await readFile(file, 'utf8');
  await writeFile(file, text.replace(/^language: .*$/m, 'language: en-XA'));
  const cache = join(dirname(demo), 'work', 'cache');
  const site = { content, address: 'https://bench-and-barn.example/', secrets: [] };
  return build(home, site, { WITNESSMARK_CACHE: cache });
}

/** Builds a content folder by the same command that a builder types. */
async function build(
  home: string,
  site: Omit<BuiltSite, 'folder'>,
  env: Readonly<Record<string, string>> = {},
): Promise<BuiltSite> {
  const folder = join(home, 'site');
  await command('build', {
    WITNESSMARK_CONTENT: site.content,
    WITNESSMARK_DIST: folder,
    WITNESSMARK_WORK: join(home, 'work'),
    ...env,
  });
  return { ...site, folder };
}

async function command(name: string, env: Readonly<Record<string, string>>): Promise<void> {
  await promisify(execFile)(process.execPath, ['src/cli/run.mjs', name], {
    env: { ...process.env, NODE_ENV: 'production', ...env },
  });
}
