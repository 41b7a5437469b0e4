import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { PHOTO } from '../../src/card/draw-card.ts';
import { entryCard, firstPhotoOf } from '../../src/card/entry-card.ts';
import { makeCard } from '../../src/card/make-card.ts';
import { projectCard } from '../../src/card/project-card.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

const reader = { owner: 'Ines Marlow', language: 'en-GB' };

const press = () =>
  inContentFolder(
    {
      'press/entries/2025-04-13-the-ram-slides.mdx': [
        '<Tally />',
        '<Photo file="ram.jpg" alt="The ram" caption="Out" />',
      ],
    },
    async (folder) => {
      const [project] = (await openBook(folder, { now: NOON })).projects;
      const entry = project?.entries.find(({ slug }) => slug.endsWith('the-ram-slides'));
      if (project === undefined || entry === undefined) throw new Error('no such entry');
      return { project, entry };
    },
  );

test('the card of an entry says machine, title, summary, place in the log, day and phase', async () => {
  const { project, entry } = await press();
  expect(firstPhotoOf(entry)).toBe('ram.jpg');
  expect(entryCard(entry, project, { ...reader, photo: 'ram.webp' })).toMatchInlineSnapshot(`
    {
      "block": [
        [
          "Owner",
          "Ines Marlow",
        ],
        [
          "Document",
          "Log entry 1 of 1",
        ],
        [
          "Date",
          "13 Apr 2025",
        ],
        [
          "Phase",
          "Rebuild",
        ],
      ],
      "lines": [
        "The gib is in and the play is gone.",
      ],
      "over": "1931 Wendlebury No. 3",
      "photo": "ram.webp",
      "title": "The ram slides",
    }
  `);
});

test('the card of a project says what was put into it so far', async () => {
  const { project } = await press();
  expect(projectCard(project, reader)).toMatchInlineSnapshot(`
    {
      "block": [
        [
          "Owner",
          "Ines Marlow",
        ],
        [
          "Document",
          "Project sheet",
        ],
        [
          "Date",
          "13 Apr 2025",
        ],
        [
          "State",
          "Under way",
        ],
      ],
      "lines": [
        "A fly press taken apart and put back true.",
        "7:30 hours worked, £192.50 spent, 1 entry",
      ],
      "over": "1931 Wendlebury No. 3",
      "title": "Wendlebury press",
    }
  `);
});

test('a card with a photo shows it in its frame, and is made anew for another one', async () => {
  const { project, entry } = await press();
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-cards-'));
  try {
    const cards = ['#c01020', '#1020c0'].map(async (background, index) => {
      const photo = join(folder, `${index}.webp`);
      await sharp({ create: { width: 960, height: 720, channels: 3, background } }).toFile(photo);
      const card = await makeCard(entryCard(entry, project, { ...reader, photo }), folder);
      // Statistics are those of an input, whatever is done to it after.
      const shown = await sharp(card).extract(PHOTO).toBuffer();
      const { dominant } = await sharp(shown).stats();
      return dominant.r > dominant.b ? 'red' : 'blue';
    });
    expect(await Promise.all(cards)).toEqual(['red', 'blue']);
  } finally {
    await rm(folder, { recursive: true });
  }
});
