import { execFile } from 'node:child_process';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { differences } from './same-site.ts';

/** What a build adds to the pages: feeds, the search and the pictures of photos. */
const MADE_LATER =
  /^\S*(feed(\/\d+)?\.(atom|json)|find\/\S+|photos\/\S+\.(avif|webp)) is only in the second$/;

const { folder, content } = inject('site');
let home = '';

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'witnessmark-astro-'));
});
afterAll(() => rm(home, { recursive: true, force: true }));

test('pages are those that Astro itself makes, byte for byte', async () => {
  const names = await readdir(content, { withFileTypes: true });
  const projects = names.filter((item) => item.isDirectory() && !item.name.startsWith('.'));
  const site = join(home, 'site');
  await promisify(execFile)(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build'], {
    env: {
      ...process.env,
      NODE_ENV: 'production',
      ASTRO_TELEMETRY_DISABLED: '1',
      WITNESSMARK_CONTENT: content,
      WITNESSMARK_WORK: join(dirname(content), 'work'),
      WITNESSMARK_OUT: site,
      WITNESSMARK_PAGES: projects.map(({ name }) => name).join(' '),
    },
  });
  const different = await differences(site, folder);
  expect(different.filter((line) => !MADE_LATER.test(line))).toEqual([]);
  expect(different.length).toBeGreaterThan(10);
});
