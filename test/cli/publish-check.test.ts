import { execFileSync } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Changes } from '../check/content-folder.ts';
import { type Dirs, inWorkshop, runCommand } from './run-command.ts';

const PAGE = '<!doctype html><html><head><title>t</title></head><body>';

/** A small site as a build leaves it. */
const SITE: Readonly<Record<string, string>> = {
  'index.html': PAGE,
  '404.html': '<html><head><meta name="robots" content="noindex"></head>',
  'search/index.html': '<html><head><meta name="robots" content="noindex"></head>',
  'press/index.html': `${PAGE}press`,
  'press/specs/ram-play/index.html': `${PAGE}play`,
  'press/specs/old/index.html': `${PAGE}old`,
  'feed.atom': '<feed/>',
  'assets/Sheet.abc.css': 'a{}',
};

const put = async (dirs: Dirs, files: Readonly<Record<string, string>>) => {
  for (const [file, text] of Object.entries(files)) {
    await mkdir(dirname(join(dirs.dist, file)), { recursive: true });
    await writeFile(join(dirs.dist, file), text);
  }
};
const publishCheck = (dirs: Dirs, ...args: string[]) =>
  runCommand(['publish-check', ...args], dirs);
const kept = (dirs: Dirs) => readFile(join(dirs.content, 'published.txt'), 'utf8');

/** A site that was published, to be changed. */
const published = <Result>(use: (dirs: Dirs) => Promise<Result>, changes: Changes = {}) =>
  inWorkshop(changes, async (dirs) => {
    await put(dirs, SITE);
    expect((await publishCheck(dirs, '--keep')).status).toBe(0);
    return use(dirs);
  });

describe('publish:check', () => {
  test('calls every address new the first time, and keeps nothing unless it is told to', () =>
    inWorkshop({}, async (dirs) => {
      await put(dirs, SITE);
      const { status, out } = await publishCheck(dirs);
      expect(status).toBe(0);
      expect(out).toMatch(/^Nothing was kept before: every address is new\.\n5 new\n/);
      await expect(kept(dirs)).rejects.toThrow('ENOENT');
    }));

  test('keeps what sha256sum can check: pages that may be listed and files, no assets', () =>
    published(async (dirs) => {
      const paths = (await kept(dirs))
        .trimEnd()
        .split('\n')
        .map((line) => line.slice(66));
      expect(paths).toEqual([
        'feed.atom',
        'index.html',
        'press/index.html',
        'press/specs/old/index.html',
        'press/specs/ram-play/index.html',
      ]);
      const checked = execFileSync('sha256sum', ['-c', join(dirs.content, 'published.txt')], {
        cwd: dirs.dist,
      });
      expect(`${checked}`).toContain('press/index.html: OK');
    }));

  test('finds nothing where nothing changed', () =>
    published(async (dirs) => {
      const { status, out } = await publishCheck(dirs);
      expect(out).toMatch(/^0 new\n0 changed\n0 vanished\n0 private\n8 files, /);
      expect(status).toBe(0);
    }));

  test('lists what is new and what changed, with sizes', () =>
    published(async (dirs) => {
      await put(dirs, { 'press/index.html': `${PAGE}other`, 'press/costs/index.html': PAGE });
      const { status, out } = await publishCheck(dirs);
      expect(out).toContain(
        '1 new\n  press/costs/  0.1 kB\n1 changed\n  press/  0.1 kB\n0 vanished',
      );
      expect(status).toBe(0);
    }));

  test('refuses a page that vanished, says what to type, and keeps the manifest as it was', () =>
    published(async (dirs) => {
      const before = await kept(dirs);
      await rm(join(dirs.dist, 'press/specs/old'), { recursive: true });
      const { status, out } = await publishCheck(dirs, '--keep');
      expect(out).toContain('1 vanished\n  press/specs/old/\n    → bring it back');
      expect(status).toBe(1);
      expect(await kept(dirs)).toBe(before);
    }));

  test('says to build again where the content still makes a page that vanished', () =>
    published(async (dirs) => {
      await rm(join(dirs.dist, 'press/specs/ram-play'), { recursive: true });
      const { status, out } = await publishCheck(dirs);
      expect(out).toContain(
        '  press/specs/ram-play/\n    → the content makes it: run "npm run build" again',
      );
      expect(status).toBe(1);
    }));

  test('refuses a feed that vanished', () =>
    published(async (dirs) => {
      await rm(join(dirs.dist, 'feed.atom'));
      const { status, out } = await publishCheck(dirs);
      expect(out).toContain('1 vanished\n  feed.atom\n');
      expect(status).toBe(1);
    }));

  test('accepts a page that vanished and that site.yaml says moved', () =>
    published(
      async (dirs) => {
        await rm(join(dirs.dist, 'press/specs/old'), { recursive: true });
        const { status, out } = await publishCheck(dirs, '--keep');
        expect(out).toContain('0 vanished');
        expect(status).toBe(0);
        expect(await kept(dirs)).not.toContain('specs/old');
      },
      {
        'site.yaml': [
          'builder:',
          'moved:\n  - from: press/specs/old/\n    to: press/specs/\nbuilder:',
        ],
      },
    ));

  test('refuses an original that would be published, under whatever name', () =>
    published(
      async (dirs) => {
        await put(dirs, { 'press/data.bin': 'the original' });
        const { status, out } = await publishCheck(dirs, '--keep');
        expect(out).toContain('1 private\n  press/data.bin\n');
        expect(status).toBe(1);
      },
      { 'press/receipts/r.pdf': 'the original' },
    ));

  test('refuses a page that says which machine it is', () =>
    published(
      async (dirs) => {
        await put(dirs, { 'press/index.html': `${PAGE}W3-1931-204` });
        const { status, out } = await publishCheck(dirs);
        expect(out).toContain('1 private\n  press/index.html\n');
        expect(status).toBe(1);
      },
      { 'press/project.yaml': ['  year:', '  identity: W3-1931-204\n  year:'] },
    ));

  test('keeps no site that was built from something else', () =>
    inWorkshop({}, async (dirs) => {
      expect((await runCommand(['build'], dirs)).status).toBe(0);
      expect((await publishCheck(dirs)).status).toBe(0);
      const hours = join(dirs.content, 'press/ledger/hours.csv');
      await writeFile(hours, (await readFile(hours, 'utf8')).replace('Cleaned', 'Washed'));
      const { status, err } = await publishCheck(dirs, '--keep');
      expect([status, err]).toEqual([
        1,
        'The site was not built from the content as it is now: press. Run "npm run build" first.\n',
      ]);
      await expect(kept(dirs)).rejects.toThrow('ENOENT');
    }));

  test('says what is wrong with a manifest that was broken, and that nothing is built', async () => {
    await inWorkshop({ 'published.txt': 'nothing\n' }, async (dirs) => {
      expect((await publishCheck(dirs)).err).toBe(
        'There is no built site. Run "npm run build" first.\n',
      );
      await put(dirs, SITE);
      const { status, err } = await publishCheck(dirs);
      expect([status, err]).toEqual([
        2,
        'published.txt:1: this is no line of a manifest. Restore the file.\n',
      ]);
    });
  });
});

describe('check', () => {
  const HASH = '0'.repeat(64);

  test('refuses a page of the last publish that the content does not make any more', () =>
    inWorkshop({ 'published.txt': `${HASH}  press/specs/ram-plya/index.html\n` }, async (dirs) => {
      const { status, out } = await runCommand(['check'], dirs);
      expect(out).toContain('the page "press/specs/ram-plya/" was published, and is gone');
      expect(out).toContain('to: press/specs/ram-play/');
      expect(status).toBe(1);
    }));

  test('says where a move leads nowhere', () =>
    inWorkshop(
      { 'site.yaml': ['builder:', 'moved:\n  - from: a/\n    to: press/spec/\nbuilder:'] },
      async (dirs) => {
        const { status, out } = await runCommand(['check'], dirs);
        expect(out).toMatch(
          /site\.yaml:6:9\n {2}moved: there is no page "press\/spec\/"\n {2}→ write "press\/specs\/"/,
        );
        expect(status).toBe(1);
      },
    ));

  test.each([
    ['/press/', 'write "press/"'],
    ['https://shed.example/press/', 'write "press/"'],
    ['../press/', 'write it like'],
    ['press/?q', 'write it like'],
  ])('refuses %s as an address inside the site', (from, fix) =>
    inWorkshop(
      { 'site.yaml': ['builder:', `moved:\n  - from: "${from}"\n    to: press/\nbuilder:`] },
      async (dirs) => {
        const { status, out } = await runCommand(['check'], dirs);
        expect(out).toContain('is not an address inside the site');
        expect(out).toContain(fix);
        expect(status).toBe(1);
      },
    ),
  );
});
