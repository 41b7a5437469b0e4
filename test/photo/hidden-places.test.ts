import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { inPhotoFolder } from './photo-folder.ts';

const picture = await sharp({
  create: { width: 1000, height: 500, channels: 3, background: '#e08040' },
})
  .jpeg()
  .toBuffer();

/** What is said of a photo of which the middle half is hidden, with more lines of its record. */
async function said(...lines: string[]): Promise<string[]> {
  const record = [
    '- id: one',
    'file: ram.jpg',
    'hide: [{ what: face, box: [0.25, 0.25, 0.5, 0.5] }]',
    ...lines,
  ];
  return inPhotoFolder(
    { 'ram.jpg': picture, 'photos.yaml': `${record.join('\n  ')}\n` },
    async (folder) => (await folder.derive()).map(({ message }) => message),
  );
}

describe('a callout', () => {
  test('does not point into a hidden area', async () => {
    expect(
      await said('callouts: [{ at: [0.5, 0.5], part: gib }, { at: [0.1, 0.5], part: nut }]'),
    ).toEqual(['callout 1 points at 0.5 0.5, which lies in a hidden area (face)']);
    expect(
      await said('callouts: [{ at: [0.1, 0.5], to: [0.3, 0.5], spec: ram-play }]'),
    ).toHaveLength(1);
  });

  test('is a place of the photo as it is published: cropped', async () => {
    // The left quarter is cut off, so that 0.05 across lies at 0.29 of the upright photo, and 0.8 at 0.85.
    const crop = 'crop: [0.25, 0, 0.75, 1]';
    expect(await said(crop, 'callouts: [{ at: [0.05, 0.5], part: gib }]')).toHaveLength(1);
    expect(await said(crop, 'callouts: [{ at: [0.8, 0.5], part: gib }]')).toEqual([]);
  });

  test('and straightened', async () => {
    // Turned 15° clockwise about the middle, the upper right of the area goes down and to the right, its lower right to the left.
    // What is kept is 0.655 times as large (1000 / (1000 cos 15° + 500 sin 15°) is 0.913, 500 / (500 cos + 1000 sin) is 0.674, the
    // lesser counts): 674 × 337 pixels. At 0.83 across and 0.76 down it shows (222, 88) from the middle: back-turned (237, 27), hidden.
    expect(
      await said('straighten: 15', 'callouts: [{ at: [0.83, 0.76], part: gib }]'),
    ).toHaveLength(1);
    // At 0.83 across and 0.12 down it shows (222, −128): back-turned (181, −181), above the area.
    expect(await said('straighten: 15', 'callouts: [{ at: [0.83, 0.12], part: gib }]')).toEqual([]);
  });
});
