import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const shows = (tag: string) => ({ [ENTRY]: ['<Tally />', tag] as const });
const record = (...lines: string[]) => ({
  'press/photos.yaml': `- ${['id: ram', 'file: ram.jpg', ...lines].join('\n  ')}\n`,
});

describe('a shown photo', () => {
  it('takes its words from where it is shown or from its record', async () => {
    expect(await check(shows('<Photo file="ram.jpg" alt="The ram" caption="Out" />'))).toBe('');
    const words = record('alt: The ram', 'caption: Out');
    expect(await check({ ...shows('<Photo file="ram.jpg" />'), ...words })).toBe('');
  });

  it('is described for those who cannot see it', async () => {
    expect(
      await check({ ...shows('<Photo file="ram.jpg" />'), ...record('caption: Out') }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Photo> lacks "alt"
        → add alt="…" here, or "alt: …" to its record in photos.yaml"
    `);
  });
});

describe('a record of a photo', () => {
  it('names a file that is there, once', async () => {
    expect(
      await check({
        'press/photos.yaml':
          '- { id: one, file: ram.jpg }\n- { id: two, file: ram.jpg }\n- { id: three, file: rem.jpg }\n',
      }),
    ).toMatchInlineSnapshot(`
      "press/photos.yaml:2:20
        "ram.jpg" has a record already: "one"
        → put both into one record
      press/photos.yaml:3:22
        file: "rem.jpg" is not in press/photos/
        → did you mean "ram.jpg"?"
    `);
  });

  it('has areas inside the photo, each one box or one outline', async () => {
    expect(
      await check(
        record(
          'hide:',
          '  - { what: plate, box: [0.9, 0.2, 0.2, 0.1] }',
          '  - { what: face, box: [0.1, 20%, 0.2, 0.1] }',
          '  - { what: plat }',
          '  - { what: face, outline: [[0.1, 0.2], [0.3, 0.4]] }',
          '  - { what: face, outline: [[0.1, 0.2], [0.3, 0.4], [2, 0]] }',
        ),
      ),
    ).toMatchInlineSnapshot(`
      "press/photos.yaml:4:27
        hide.0.box: "["0.9","0.2","0.2","0.1"]" is not a rectangle inside the photo
        → write left, top, width and height as fractions, like [0.25, 0.5, 0.2, 0.1]
      press/photos.yaml:5:26
        hide.1.box: "["0.1","20%","0.2","0.1"]" is not a rectangle inside the photo
        → write left, top, width and height as fractions, like [0.25, 0.5, 0.2, 0.1]
      press/photos.yaml:6:15
        hide.2.what: "plat" is not one of the words known here
        → did you mean "plate"?
      press/photos.yaml:7:7
        hide.3: "{"what":"face","outline":[["0.1","0.2"],["0.3","0.4"]]}" is not one box or one outline of three points or more
        → write box: [left, top, width, height], as fractions
      press/photos.yaml:8:55
        hide.4.outline.2: "["2","0"]" is not a point inside the photo
        → write across and down from the top left as fractions, like [0.25, 0.5]"
    `);
  });

  it('has an angle that straightens and a crop that leaves something', async () => {
    expect(await check(record('straighten: 40', 'crop: [0, 0, 0, 1]'))).toMatchInlineSnapshot(`
      "press/photos.yaml:3:15
        straighten: "40" is not an angle from -15 to 15
        → write degrees, clockwise, like -1.5
      press/photos.yaml:4:9
        crop: "["0","0","0","1"]" is not a rectangle inside the photo
        → write left, top, width and height as fractions, like [0.25, 0.5, 0.2, 0.1]"
    `);
    expect(await check(record('straighten: -1.5', 'crop: 0 0.1 1 0.8'))).toBe('');
  });

  it('that is tagged for a plate or a face hides it, or says that it need not be hidden', async () => {
    expect(await check(record('tags: [plate, ram]'))).toMatchInlineSnapshot(`
      "press/photos.yaml:3:9 (warning)
        "ram.jpg" is tagged plate, and no such area is hidden on it
        → add "hide:" with "- what: plate" and "box: [left, top, width, height]", or "nothing-to-hide: true""
    `);
    expect(
      await check(record('tags: [plate]', 'hide:', '  - { what: face, box: [0, 0, 1, 0.1] }')),
    ).toContain('no such area is hidden on it');
    expect(await check(record('tags: [plate]', 'nothing-to-hide: true'))).toBe('');
    expect(
      await check(record('tags: [plate]', 'hide:', '  - { what: plate, box: [0, 0, 1, 0.1] }')),
    ).toBe('');
  });

  it('does not hide areas and say that there is nothing to hide', async () => {
    expect(
      await check(
        record('nothing-to-hide: true', 'hide:', '  - { what: face, box: [0, 0, 1, 0.1] }'),
      ),
    ).toMatchInlineSnapshot(`
      "press/photos.yaml:3:20
        the record lists areas to hide and says that there is nothing to hide
        → keep one of the two"
    `);
  });
});
