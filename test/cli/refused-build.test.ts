import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Dirs, filesOf, inWorkshop, runCommand } from './run-command.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

async function publishBefore({ dist }: Dirs) {
  await mkdir(join(dist, 'press'), { recursive: true });
  await writeFile(join(dist, 'index.html'), '<p>The site of last week</p>');
  await writeFile(join(dist, 'press', 'data.bin'), Uint8Array.of(0, 255, 10, 13));
  return filesOf(dist);
}

const newFolders = async ({ work }: Dirs) =>
  (await readdir(work).catch(() => [])).filter((name) => name.startsWith('dist-'));

describe('a build that is refused', () => {
  it.each([
    [
      'a mistake in a row',
      { 'press/ledger/hours.csv': ['5:00', '25:00'] as const },
      /24 hours|has 25:00 hours/,
    ],
    ['a broken file', { 'press/phases.yaml': '- [}\n' }, /broken YAML/],
    ['no site.yaml', { 'site.yaml': undefined }, /there is no site\.yaml/],
    [
      'a photo that is none',
      { [ENTRY]: ['<Tally />', '<Photo file="ram.jpg" alt="The ram" caption="Out" />'] as const },
      /press\/photos\/ram\.jpg:1:1\n {2}the photo can't be read/,
    ],
  ])('for %s ends with 1 and leaves the site as it was, byte for byte', (_, changes, said) =>
    inWorkshop(changes, async (dirs) => {
      const before = await publishBefore(dirs);
      const ran = await runCommand(['build'], dirs);
      expect(ran.status).toBe(1);
      expect(ran.out).toMatch(said);
      expect(ran.err).toMatch(
        /^1 problem in 1 file\. Nothing was built; \S+dist is as it was\.\n$/,
      );
      expect(await filesOf(dirs.dist)).toEqual(before);
      expect(await newFolders(dirs)).toEqual([]);
    }),
  );

  it('for a private number that was typed into an entry names the page it would have been on', () => {
    const changes = {
      'press/photos/ram.jpg': undefined,
      'press/project.yaml': [
        'work: [clean',
        'identity:\n  keeps: press\n  marks:\n    - what: plate\n      value: W3-1931-204\nwork: [clean',
      ] as const,
      [ENTRY]: ['<Tally />', 'The plate says W3-1931-204.\n\n<Tally />'] as const,
    };
    return inWorkshop(changes, async (dirs) => {
      const before = await publishBefore(dirs);
      const ran = await runCommand(['build'], dirs);
      expect(ran.status).toBe(1);
      expect(ran.err).toMatch(
        /these files must not be published: .*press\/log\/2025-04-13-the-ram-slides\/index\.html/,
      );
      expect(await filesOf(dirs.dist)).toEqual(before);
    });
  });

  it('for want of a content folder says which one', () =>
    inWorkshop({}, async (dirs) => {
      const before = await publishBefore(dirs);
      const ran = await runCommand(['build'], { ...dirs, content: join(dirs.content, 'none') });
      expect(ran.status).toBe(1);
      expect(ran.err).toMatch(/^There is no folder \S+none\./);
      expect(await filesOf(dirs.dist)).toEqual(before);
    }));
});
