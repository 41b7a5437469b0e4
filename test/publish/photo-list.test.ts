import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Project } from '../../src/book/types.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { calloutList } from '../../src/publish/callout-list.ts';
import { photoList } from '../../src/publish/photo-list.ts';
import type { Day } from '../../src/time/day.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const to = addressesOf('https://shed.example/');

async function press(changes: Changes): Promise<Project> {
  const book = await inContentFolder(changes, (folder) => openBook(folder, { now: NOON }));
  const [project] = book.projects;
  if (project === undefined) throw new Error('no project');
  return project;
}

const FOUND = {
  'press/surveys.yaml': '- { id: first, name: First, date: 2025-03-02 }\n',
  'press/ledger/findings.yaml':
    '- { id: f-001, date: 2025-03-02, survey: first, part: nut, found: wear, photo: ram.jpg, at: [0.2, 0.3] }\n',
};

describe('photoList', () => {
  test('has every photo that an entry, a pair, a finding or a record names, in order of its day', async () => {
    const project = await press({
      ...FOUND,
      'press/photos/Bed 2.JPG': 'a picture',
      'press/photos/bed-2.png': 'a picture',
      'press/photos/unnamed.jpg': 'a picture',
      'press/photos/шток.jpg': 'a picture',
      'press/photos.yaml': '- { id: first-look, file: шток.jpg, taken: 2025-03-01 }\n',
      [ENTRY]: [
        '<Tally />',
        '<PhotoPair before="Bed 2.JPG" after="bed-2.png" before-alt="Rusty" after-alt="Bright" caption="Both" />',
      ],
    });
    const list = photoList(project).map(({ name, file, alt }) => [name, file, alt]);
    expect(list).toEqual([
      ['first-look', 'шток.jpg', ''],
      ['ram', 'ram.jpg', ''],
      ['bed-2', 'Bed 2.JPG', 'Rusty'],
      ['bed-2-2', 'bed-2.png', 'Bright'],
    ]);
  });

  test('says what names a photo: entries, findings and parts, and the phase of the entry where the record says none', async () => {
    const project = await press({
      ...FOUND,
      [ENTRY]: ['<Tally />', '<Photo file="ram.jpg" alt="The ram" caption="Out" />'],
    });
    const [photo] = photoList(project);
    expect(photo).toMatchObject({
      phase: 'rebuild',
      parts: ['nut'],
      caption: 'Out',
      alt: 'The ram',
    });
    expect(photo?.findings.map(({ id }) => id)).toEqual(['f-001']);
    expect(photo?.entries.map(({ slug }) => slug)).toEqual(['2025-04-13-the-ram-slides']);
  });
});

describe('calloutList', () => {
  const files = {
    ...FOUND,
    'press/photos.yaml':
      '- { id: ram, file: ram.jpg, callouts: [{ at: [0, 0], part: gib }, { at: [0, 1], to: [1, 1], spec: ram-play }, { at: [1, 0], label: A dent }] }\n',
  };
  const listed = async (day: string) =>
    calloutList((await press(files)).asOf(day as Day), 'ram.jpg', { to, language: 'en-GB' });

  test('has values as of the day, links, and findings that were there by then', async () => {
    expect(
      (await listed('2025-04-13')).map(({ name, href, value }) => [
        name,
        href,
        value?.replace(/\s/g, ' '),
      ]),
    ).toEqual([
      ['Gib', '/press/parts/gib/', undefined],
      // 0.08, 0.08 and 0.09 mm; U by hand: s/√3 = 0.0033, step 0.01/√12 = 0.0029, together 0.0044 with 6 degrees of freedom, × 2.45.
      ['Play of the ram', '/press/specs/ram-play/', '0.083 ± 0.011 mm'],
      ['A dent', undefined, undefined],
      ['Bronze nut, found: wear', to.row(await press(files), 'f-001'), undefined],
    ]);
    expect((await listed('2025-03-01')).map(({ value }) => value)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
