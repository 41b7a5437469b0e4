import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

/** Problems of the entry with a text in the place of its tally, in line 13. */
const entry = (text: string) => check({ [ENTRY]: ['<Tally />', text] });

describe('a component', () => {
  it('that does not exist is named at its own place in the entry', async () => {
    expect(await entry('The day so far: <Taly />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:17
        unknown component <Taly>
        → did you mean "Tally"?"
    `);
  });

  it('is no word that JavaScript happens to know', async () => {
    expect(await entry('<__proto__ />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        unknown component <__proto__>
        → one of: Tally, Spec, Change, Working, Timeline, Forecast, Costs, Budget, Parts, Donor, Survey, Choice, Sources, Wanted, Hazard, Photo, PhotoPair, AtTime"
    `);
  });

  it('has its place counted as an editor counts, after letters that are long in bytes', async () => {
    expect(await entry('Höhe 5 µm — <Taly /> ½ <Taly />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:13
        unknown component <Taly>
        → did you mean "Tally"?
      press/entries/2025-04-13-the-ram-slides.mdx:13:24
        unknown component <Taly>
        → did you mean "Tally"?"
    `);
  });

  it('in a list, a table and a quotation has the place it stands at', async () => {
    const text = `- one <Taly />

| a | b |
| - | - |
| 1 | <Taly /> |

> so <Taly />`;
    expect(await entry(text)).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        unknown component <Taly>
        → did you mean "Tally"?
      press/entries/2025-04-13-the-ram-slides.mdx:17:7
        unknown component <Taly>
        → did you mean "Tally"?
      press/entries/2025-04-13-the-ram-slides.mdx:19:6
        unknown component <Taly>
        → did you mean "Tally"?"
    `);
  });

  it('needs all its properties', async () => {
    expect(await entry('<Spec />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Spec> lacks "of"
        → add of="…""
    `);
  });

  it('takes no property that it does not have', async () => {
    expect(await entry('<Spec off="ram-play" of="ram-play" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> has no property "off"
        → did you mean "of"?"
    `);
    expect(await entry('<Tally until="2025-03-08" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        <Tally> has no property "until"
        → write <Tally />"
    `);
    expect(await entry('<Tally {...all} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Tally> has no property "…"
        → write <Tally />"
    `);
  });
});

describe('a hazard note', () => {
  it('lacks none of its parts', async () => {
    const found = await entry('<Hazard signal="Danger" hazard="The flywheel turns" avoid=" " />');
    expect(found).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Hazard> lacks "harm"
        → add harm="…"
      press/entries/2025-04-13-the-ram-slides.mdx:13:9
        <Hazard> signal: unknown word "Danger"
        → did you mean "DANGER"?
      press/entries/2025-04-13-the-ram-slides.mdx:13:53
        <Hazard> avoid is empty
        → say it in a few words"
    `);
  });
});

describe('a photo', () => {
  it('is in the folder of photos', async () => {
    const photo = (file: string) => entry(`<Photo file="${file}" alt="The ram" caption="Out" />`);
    expect(await photo('ram.jpg')).toBe('');
    expect(await photo('ram.jpeg')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        the photo "ram.jpeg" is not in press/photos/
        → did you mean "ram.jpg"?"
    `);
    expect(
      await check({
        'press/photos/ram.jpg': undefined,
        [ENTRY]: ['<Tally />', '<Photo file="ram.jpg" alt="The ram" caption="Out" />'],
      }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        the photo "ram.jpg" is not in press/photos/
        → put the file there"
    `);
  });
});

describe('a picture', () => {
  it('stands in an entry as a photo, since any other way could publish the original', async () => {
    expect(await entry('![The ram](../photos/ram.jpg)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        a picture stands in an entry as <Photo>, which publishes no original
        → write <Photo file="…" alt="…" caption="…" />"
    `);
    expect(await entry('So: <img src="ram.jpg" alt="The ram" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:5
        a picture stands in an entry as <Photo>, which publishes no original
        → write <Photo file="…" alt="…" caption="…" />"
    `);
  });
});

describe('a moment of a video', () => {
  it('needs a video', async () => {
    expect(await entry('See <AtTime at="4:32">the ram</AtTime>.')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:5
        <AtTime> points into a video, and the entry names none
        → add "video: https://…" to the front matter"
    `);
    expect(
      await check({ [ENTRY]: ['tells:', 'moments:\n  - at: 4:32\n    label: The ram\ntells:'] }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:6:1
        moments are listed, and the entry names no video
        → add "video: https://…""
    `);
  });

  it('is a time', async () => {
    const found = await check({
      [ENTRY]: [
        'tells: [h-002, r-002]\n---\n',
        'video: https://clips.example/7\n---\n\n<AtTime at="4m32">The ram</AtTime>\n',
      ],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:9:9
        <AtTime> at: "4m32" is not a time in a video
        → write minutes and seconds, like 4:32"
    `);
  });
});

describe('<Budget />', () => {
  it('in a project without a budget is told, with what to write', async () => {
    expect(await entry('<Budget />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Budget> shows a budget, and the project has none
        → write lines in ledger/budgets: id, date, amount, phase"
    `);
  });

  it('in a project with one is fine', async () => {
    const budgets = 'id,date,amount,phase\nb-1,2025-03-01,100,rebuild\n';
    const found = await check({
      [ENTRY]: ['<Tally />', '<Budget />'],
      'press/ledger/budgets.csv': budgets,
    });
    expect(found).toBe('');
  });
});
