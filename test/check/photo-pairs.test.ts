import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const pair = (props: string) =>
  check({
    'press/photos/bed.jpg': 'another picture',
    [ENTRY]: ['<Tally />', `<PhotoPair ${props} />`],
  });
const WORDS = 'before-alt="Before" after-alt="After" caption="The ram"';
const FILES = 'before="ram.jpg" after="bed.jpg"';

describe('a pair of photos', () => {
  it('stands as it is, or aligned by two points on each', async () => {
    expect(await pair(`${FILES} ${WORDS}`)).toBe('');
    expect(
      await pair(`${FILES} ${WORDS} before-at="0.1 0.2, 0.8 .2" after-at="0 1, 1 1" reveal`),
    ).toBe('');
  });

  it('names photos that are there, describes both and has a caption', async () => {
    expect(await pair('before="ram.jpg" after="bad.jpg" after-alt="After"')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <PhotoPair> lacks "before-alt"
        → add before-alt="…" here, or "alt: …" to its record in photos.yaml
      press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <PhotoPair> lacks "caption"
        → add caption="…"
      press/entries/2025-04-13-the-ram-slides.mdx:13:29
        the photo "bad.jpg" is not in press/photos/
        → did you mean "bed.jpg"?"
    `);
  });

  it('has two different points, inside the photo, on both photos or on none', async () => {
    expect(
      await pair(`${FILES} ${WORDS} before-at="0.1 0.2" after-at="0.1 0.2, 1.2 0.4"`),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:101
        <PhotoPair> before-at: "0.1 0.2" is not two different places on a photo
        → write across and down of both as fractions, like before-at="0.25 0.60, 0.75 0.60"
      press/entries/2025-04-13-the-ram-slides.mdx:13:121
        <PhotoPair> after-at: "0.1 0.2, 1.2 0.4" is not two different places on a photo
        → write across and down of both as fractions, like after-at="0.25 0.60, 0.75 0.60""
    `);
    expect(
      await pair(`${FILES} ${WORDS} before-at="0.1 0.2, 0.1 0.21" after-at="0.1 0.2, 0.4 0.4"`),
    ).toContain('before-at: "0.1 0.2, 0.1 0.21" is not two different places on a photo');
    expect(await pair(`${FILES} ${WORDS} before-at="0.1 0.2, 0.8 0.2"`)).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <PhotoPair> has two places on one photo and lacks "after-at"
        → add after-at="…, …": the same two places on the other photo"
    `);
  });

  it('shows two photos, and reveals only what is aligned', async () => {
    expect(await pair(`before="ram.jpg" after="ram.jpg" ${WORDS} reveal`)).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:29
        <PhotoPair> shows "ram.jpg" twice
        → name the photo from before and a later one
      press/entries/2025-04-13-the-ram-slides.mdx:13:101
        <PhotoPair> can reveal one photo over the other only when both are aligned
        → add before-at="…, …" and after-at="…, …", or leave "reveal" out"
    `);
    expect(
      await pair(`${FILES} ${WORDS} before-at="0 0, 1 1" after-at="0 0, 1 1" reveal="yes"`),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:142
        <PhotoPair> reveal: "yes" stands where nothing is wanted
        → write reveal alone"
    `);
  });
});
