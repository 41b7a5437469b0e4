import { mkdir, rename, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { inContentFolder } from '../check/content-folder.ts';

const HOURS = 'press/ledger/hours.csv';
const told = (content: Awaited<ReturnType<typeof readContent>>) =>
  content.problems.map(({ file, message }) => `${file}: ${message}`);

it('a ledger file that is a link to a file of the content folder is read', () =>
  inContentFolder({}, async (folder) => {
    await mkdir(join(folder, '.kept'));
    await rename(join(folder, HOURS), join(folder, '.kept/hours.csv'));
    await symlink('../../.kept/hours.csv', join(folder, HOURS));
    const content = await readContent(folder);
    expect(content.projects[0]?.lists.hours.map(({ value }) => value.id)).toEqual([
      'h-001',
      'h-002',
    ]);
    expect(told(content)).toEqual([]);
  }));

it('a link that leads out of the content folder, or nowhere, is told and not followed', () =>
  inContentFolder({}, (outside) =>
    inContentFolder({ [HOURS]: undefined }, async (folder) => {
      await symlink(join(outside, HOURS), join(folder, HOURS));
      await symlink('nowhere.yaml', join(folder, 'press/waits.yaml'));
      const entry = '2025-05-01-elsewhere.mdx';
      await symlink(
        join(outside, 'press/entries/2025-04-13-the-ram-slides.mdx'),
        join(folder, 'press/entries', entry),
      );
      await symlink(join(outside, 'press'), join(folder, 'lathe'));
      await writeFile(join(outside, 'README.md'), 'For me.');
      await symlink(join(outside, 'README.md'), join(folder, 'press/README.md'));
      const content = await readContent(folder);
      expect(content.projects.map(({ id }) => id)).toEqual(['press']);
      expect(content.projects[0]?.lists.hours).toEqual([]);
      expect(content.projects[0]?.entries).toHaveLength(1);
      const out = 'is a link to something that is not in the content folder, which is not followed';
      expect(told(content)).toEqual([
        'lathe: the folder is a link, which is not followed',
        `press/waits.yaml: the file ${out}`,
        `${HOURS}: the file ${out}`,
        `press/entries/${entry}: the entry ${out}`,
      ]);
    }),
  ));
