import { existsSync } from 'node:fs';
import { appendFile, cp, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { filesOf, inWorkshop, type Ran, runCommand, startCommand } from '../cli/run-command.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const OTHER = ENTRY.replace('the-ram-slides', 'what-the-barn-saw');

it('builds of other folders go on beside one another, each with its own entries; in the same one there is one at a time', () =>
  inWorkshop({}, (shed) =>
    inWorkshop({}, async (barn) => {
      await rename(join(barn.content, ENTRY), join(barn.content, OTHER));
      const first = startCommand(['build'], shed);
      while (!existsSync(join(shed.work, 'build.lock'))) await wait(5);
      const [second, third, other] = await Promise.all([
        runCommand(['build'], shed),
        runCommand(['dossier'], shed),
        runCommand(['build'], barn),
      ]);
      for (const refused of [second, third] satisfies Ran[]) {
        expect(refused.status).toBe(1);
        expect(refused.err).toMatch(
          new RegExp(
            `^process ${first.child.pid} \\(build\\) has been at work here since \\d{4}-\\S+; wait for it, or end it, then try again \\(\\S+build\\.lock\\)\nNothing was (built|printed)\\.\n$`,
          ),
        );
      }
      expect(await first.ended).toMatchObject({ status: 0, err: '' });
      expect(other).toMatchObject({ status: 0, err: '' });
      for (const [dirs, entry] of [
        [shed, ENTRY],
        [barn, OTHER],
      ] as const) {
        const page = entry.replace('entries', 'log').replace('.mdx', '/index.html');
        expect(await readFile(join(dirs.dist, page), 'utf8')).toContain('is down to');
        expect(existsSync(join(dirs.work, 'build.lock'))).toBe(false);
      }
    }),
  ));

it('a build during which the content changes is not published', () =>
  inWorkshop({}, async (dirs) => {
    const site = await mkdtemp(join(tmpdir(), 'witnessmark-before-'));
    await writeFile(join(site, 'index.html'), 'The site of before');
    await cp(site, dirs.dist, { recursive: true });
    const { ended } = startCommand(['build'], dirs);
    while (!existsSync(join(dirs.work, 'photos.json'))) await wait(5);
    await appendFile(join(dirs.content, 'press/ledger/hours.csv'), 'h-003,half a ro');
    const { status, err } = await ended;
    expect(status).toBe(1);
    expect(err).toMatch(
      /^Changed while it was read: press\/ledger\/hours\.csv\nRun the command again\. Nothing was built; \S+dist is as it was\.\n$/,
    );
    expect(await filesOf(dirs.dist)).toEqual(await filesOf(site));
    await rm(site, { recursive: true });
  }));
