import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inContentFolder } from '../check/content-folder.ts';
import { type Ran, runCommand } from '../cli/run-command.ts';
import { edits } from './random-edits.ts';
import { differences } from './same-site.ts';

/** How many changes are made one after the other: a night has time for more. */
const EDITS = Number(process.env.WITNESSMARK_EDITS ?? 3);

let home = '';
let content = '';

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'witnessmark-edits-'));
  content = join(home, 'content');
  await inContentFolder({ 'press/photos/ram.jpg': undefined }, async (folder) => {
    await cp(join(folder, 'press'), join(content, 'press'), { recursive: true });
    await cp(join(folder, 'press'), join(content, 'mill'), { recursive: true });
    await cp(join(folder, 'site.yaml'), join(content, 'site.yaml'));
  });
  for (const project of ['press', 'mill'])
    await cp('content/ostermoor/photos/two-collars.jpg', join(content, project, 'photos/ram.jpg'));
});

afterAll(() => rm(home, { recursive: true, force: true }));

/** Builds into folders of a name; what earlier builds under that name left is there. */
async function build(name: string, args: readonly string[] = ['build']): Promise<Ran> {
  const dirs = { content, dist: join(home, name, 'dist'), work: join(home, name, 'work') };
  const ran = await runCommand(args, dirs);
  expect(ran.err).toBe('');
  return ran;
}

/** What is different in a site that was built with all that earlier builds left, and in one that was built of nothing. */
async function unlikeClean(): Promise<string[]> {
  await rm(join(home, 'clean'), { recursive: true, force: true });
  await build('clean');
  return differences(join(home, 'warm/dist'), join(home, 'clean/dist'));
}

describe('a build with what earlier builds left', () => {
  it('makes nothing anew where nothing changed, and one project where one changed', async () => {
    await build('warm');
    expect((await build('warm')).out).toContain('; made anew: none.');
    await edits[0]?.make(content, 900);
    expect((await build('warm')).out).toContain('; made anew: press.');
    expect(await unlikeClean()).toEqual([]);
  });

  it(`is byte for byte what a clean build makes, after each of ${EDITS} changes at random`, async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.constantFrom(...edits), fc.nat(800)), {
          minLength: EDITS,
          maxLength: EDITS,
          size: 'max',
        }),
        async (chosen) => {
          for (const [edit, n] of chosen) {
            await edit.make(content, n);
            await build('warm');
            expect([edit.what, n, ...(await unlikeClean())]).toEqual([edit.what, n]);
          }
        },
      ),
      // Each run goes on from the one before, so there is nothing to shrink.
      { numRuns: 1, endOnFailure: true },
    );
  }, 1_000_000);
});

describe('a build that several machines share', () => {
  it('is joined to the site that one machine makes, byte for byte; what is not made is named', async () => {
    const cache = join(home, 'shared');
    process.env.WITNESSMARK_CACHE = cache;
    try {
      await build('job-1', ['build', '--only', 'press']);
      const dirs = { content, dist: join(home, 'join/dist'), work: join(home, 'join/work') };
      const early = await runCommand(['join'], dirs);
      expect(early.status).toBe(1);
      expect(early.err).toContain('There are no pages of mill');
      expect(early.err).toContain('npm run build -- --only mill');
      await build('job-2', ['build', '--only', 'mill']);
      expect((await build('join', ['join'])).out).toContain('; made anew: none.');
    } finally {
      delete process.env.WITNESSMARK_CACHE;
    }
    await build('clean');
    expect(await differences(join(home, 'join/dist'), join(home, 'clean/dist'))).toEqual([]);
  });
});
