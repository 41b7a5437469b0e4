import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { inPhotoFolder } from './photo-folder.ts';

const picture = await sharp({
  create: { width: 90, height: 60, channels: 3, background: '#e08040' },
})
  .jpeg()
  .toBuffer();
const PHOTOS = { 'ram.jpg': picture, 'bed.jpg': await sharp(picture).negate().jpeg().toBuffer() };

/** Which of two photos that an entry shows are derived with these lines in photos.yaml. */
async function derived(records: string): Promise<string[]> {
  return inPhotoFolder({ ...PHOTOS, 'photos.yaml': records }, async (folder) => {
    await folder.derive();
    return Object.keys(await folder.manifest());
  });
}

const BED = '- { id: bed, file: bed.jpg }\n';
const RAM = '- { id: ram, file: ram.jpg }\n';
const BOTH = ['press/bed.jpg', 'press/ram.jpg'];

describe('a photo whose record has a mistake is not derived at all', () => {
  test.each([
    [
      'an area that is none',
      '- { id: ram, file: ram.jpg, hide: [{ what: plate, box: [0, 0, 2, 1] }] }\n',
    ],
    [
      'a misspelt field',
      '- { id: ram, file: ram.jpg, hid: [{ what: plate, box: [0, 0, 1, 1] }] }\n',
    ],
    ['a misspelt file name', '- { id: ram, file: rem.jpg }\n'],
    ['no file name', '- { id: ram }\n'],
    ['a misspelt word for it', '- { id: ram, fil: ram.jpg }\n'],
    ['a second record of it', `${RAM}- { id: again, file: ram.jpg }\n`],
  ])('%s, and the other one is', async (_, record) => {
    expect(await derived(BED + record)).toEqual(['press/bed.jpg']);
  });

  test('nor is any, when the file of records is broken', async () => {
    expect(await derived(`${BED}- { id: ram, file: ram.jpg, hide: [\n`)).toEqual([]);
  });

  test('and both are where nothing is wrong, with records or without', async () => {
    expect(await derived(BED + RAM)).toEqual(BOTH);
    expect(await derived(BED)).toEqual(BOTH);
  });
});

test('what was derived before is gone once the record has a mistake', async () => {
  await inPhotoFolder({ ...PHOTOS, 'photos.yaml': BED + RAM }, async (folder) => {
    await folder.derive();
    const before = await folder.all();
    await folder.write({
      'photos.yaml': `${BED}- { id: ram, file: ram.jpg, crop: [0, 0, 0, 1] }\n`,
    });
    await folder.derive();
    expect((await folder.all()).length).toBe(before.length / 2);
  });
});
