import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
const PHOTO = '<Photo file="ram.jpg" alt="The ram" caption="Out" callouts />';
const callouts = (...lines: string[]) => ({
  'press/photos.yaml': `- ${['id: ram', 'file: ram.jpg', 'callouts:', ...lines].join('\n  ')}\n`,
});
const shown = { [ENTRY]: ['<Tally />', PHOTO] as const };

describe('callouts of a photo', () => {
  it('name parts, specs, or things in words', async () => {
    const sound = callouts(
      '  - { at: [0.1, 0.2], part: gib }',
      '  - { at: 0.1 0.3, spec: ram-play }',
      '  - { at: [0.1, 0.4], to: [0.5, 0.4], spec: ram-play }',
      '  - { at: [1, 0.4], label: A dent }',
    );
    expect(await check({ ...shown, ...sound })).toBe('');
  });

  it('each say one thing that exists, inside the photo', async () => {
    const wrong = callouts(
      '  - { at: [0.1, 0.2], part: gip }',
      '  - { at: [0.1, 0.2], to: [0.1, 1.2], spec: ram-play }',
      '  - { at: [0.1, 0.2] }',
      '  - { at: [0.1, 0.2], part: gib, label: The gib }',
      '  - { at: [0.1, 0.2], to: [0.5, 0.2], part: gib }',
      '  - { at: [0.1, 0.2], to: [0.1, 0.2], spec: ram-play }',
    );
    expect(await check(wrong)).toMatchInlineSnapshot(`
      "press/photos.yaml:5:29
        callouts.1.to: "["0.1","1.2"]" is not a point inside the photo
        → write across and down from the top left as fractions, like [0.25, 0.5]
      press/photos.yaml:6:7
        callouts.2: "{"at":["0.1","0.2"]}" does not say one thing
        → write one of part, spec, finding, label
      press/photos.yaml:7:7
        callouts.3: "{"at":["0.1","0.2"],"part":"gib","label":"The gib"}" does not say one thing
        → write one of part, spec, finding, label
      press/photos.yaml:8:7
        callouts.4: "{"at":["0.1","0.2"],"to":["0.5","0.2"],"part":"gib"}" is a dimension line without a value
        → add spec: …, or leave out "to"
      press/photos.yaml:9:7
        callouts.5: "{"at":["0.1","0.2"],"to":["0.1","0.2"],"spec":"ram-play"}" is a dimension line of no length
        → let "to" be another place than "at""
    `);
    const unknown = callouts(
      '  - { at: [0.1, 0.2], part: gip }',
      '  - { at: [0.1, 0.2], spec: ram-plya }',
      '  - { at: [0.1, 0.2], finding: f-1 }',
    );
    expect(await check(unknown)).toMatchInlineSnapshot(`
      "press/photos.yaml:4:31
        unknown part "gip"
        → did you mean "gib"?
      press/photos.yaml:5:31
        unknown spec "ram-plya"
        → did you mean "ram-play"?
      press/photos.yaml:6:34
        unknown finding "f-1"
        → add it to findings.yaml or findings.csv"
    `);
  });

  it('are there where an entry shows them, with a value by its day', async () => {
    expect(await check(shown)).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Photo> shows the callouts of "ram.jpg", and it has none
        → add "callouts:" to its record in photos.yaml, or take "callouts" out"
    `);
    expect(
      await check({ ...shown, ...callouts('  - { at: [0, 0], spec: screw-torque }') }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Photo> with a callout of "screw-torque": there is no value on or before 2025-04-13
        → add the reading to ledger/readings, or take the callout out"
    `);
  });

  it('may be findings that say where on it they are', async () => {
    const found = {
      'press/surveys.yaml': '- { id: first, name: First, date: 2025-03-02 }\n',
      'press/ledger/findings.yaml':
        '- { id: f-001, date: 2025-03-02, survey: first, part: nut, found: wear, photo: ram.jpg, at: [0.2, 0.3] }\n',
    };
    expect(await check({ ...shown, ...found })).toBe('');
  });
});
