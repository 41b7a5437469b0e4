import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const SPEC = ['max: 0.10 mm', 'nominal: 1.2 mm\n  max: 0.10 mm'] as const;
const survey = { 'press/surveys.yaml': '- id: first\n  name: As found\n  date: 2025-03-01\n' };
const finding = (lines: string) => ({
  ...survey,
  'press/specs.yaml': SPEC,
  'press/ledger/findings.yaml': `- id: f-1\n  date: 2025-03-05\n  survey: first\n  part: nut\n${lines}`,
});
const candidates = `id,date,part,source,price,availability,risk
a-1,2025-03-05,gib,press,5.00,in-hand,low
a-2,2025-03-05,gib,spare-press,5.00,in-hand,low
a-3,2025-03-06,nut,spare-press,5.00,in-hand,low
`;
const choice = (lines: string) => ({
  'press/groups.yaml': '- id: both\n  name: Both\n  parts: [gib, nut]\n  because: One screw.\n',
  'press/ledger/candidates.csv': candidates,
  'press/ledger/choices.yaml': `- id: d-1\n  date: 2025-03-05\n  because: It fits.\n${lines}`,
});
const grades = (...lines: string[]) => ({
  'press/grades.yaml': lines
    .map((line, index) => `- id: g-${index}\n  name: g\n  definition: d\n${line}`)
    .join(''),
});

describe('a finding', () => {
  it('may have readings, an area and a place on a photo', async () => {
    const lines =
      '  found: corrosion\n  area: 5 %\n  readings: r-001\n  photo: ram.jpg\n  at: [0.2, 1]\n';
    expect(await check(finding(lines))).toBe('');
  });

  it('has an area only where one makes sense, and a place only on a photo that is there', async () => {
    expect(await check(finding('  found: crack\n  area: 5 %\n'))).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:9
        area: "5 %" stands with "crack"
        → an area goes with filler, perforation, corrosion; leave it out"
    `);
    expect(await check(finding('  found: filler\n  area: 120 %\n'))).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:9
        area: "120 %" is more than the part
        → write at most 100 %"
    `);
    expect(
      await check(finding('  found: crack\n  photo: rim.jpg\n  at: [0.2, 1.5]\n')),
    ).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:10
        the photo "rim.jpg" is not in press/photos/
        → did you mean "ram.jpg"?
      press/ledger/findings.yaml:7:7
        at: "0.2 1.5" is no place on a photo
        → write two fractions from 0 to 1, across and down, like 0.25 0.60"
    `);
    expect(await check(finding('  found: crack\n  at: [0.2, 0.5]\n'))).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:7
        at: "0.2 0.5" names no photo
        → add photo: and a file in photos/"
    `);
  });

  it('names readings of a thickness whose nominal is known, taken by its day', async () => {
    const lines = '  found: thin\n  readings: r-002\n';
    expect(await check(finding(lines))).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:13
        readings: "r-002" was taken on 2025-04-13, after the finding (2025-03-05)
        → write a finding of its own for it"
    `);
    const without = {
      ...finding('  found: thin\n  readings: r-001\n'),
      'press/specs.yaml': ['max', 'max'] as const,
    };
    expect(await check(without)).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:6:13
        readings: "r-001" is of spec "ram-play", which has no nominal
        → add the sheet's thickness as new to "ram-play" in specs.yaml, like nominal: 1.2 mm"
    `);
  });

  it('is about a version that was there, in a survey that had begun', async () => {
    const made = {
      ...finding('  found: sound\n'),
      'press/sources.yaml': ['kind: donor', 'kind: made'] as const,
      'press/ledger/findings.yaml':
        '- id: f-1\n  date: 2025-02-27\n  survey: first\n  part: gib\n  found: sound\n',
    };
    expect(await check(made)).toMatchInlineSnapshot(`
      "press/ledger/findings.yaml:2:9
        date: "2025-02-27" is before survey "first" (2025-03-01)
        → write the survey's first day in surveys.yaml: date: 2025-02-27
      press/ledger/findings.yaml:4:9
        part "gib" from source "spare-press" was not there before 2025-03-10
        → name the machine that was looked at, like source: press"
    `);
  });
});

describe('grades', () => {
  it('stand best first', async () => {
    expect(
      await check(
        grades(
          '  remaining-at-least: 80 %\n',
          '  remaining-at-least: 60 %\n  allows: [wear]\n',
          '',
        ),
      ),
    ).toBe('');
    expect(
      await check(
        grades(
          '  remaining-at-least: 60 %\n  allows: [wear]\n',
          '  remaining-at-least: 80 %\n  filler-at-most: 130 %\n',
        ),
      ),
    ).toMatchInlineSnapshot(`
      "press/grades.yaml:6:3
        allows: lacks "wear", which "g-0" allows
        → list the grades best first
      press/grades.yaml:9:23
        remaining-at-least: "80 %" is stricter than "g-0", which asks for 60 %
        → list the grades best first
      press/grades.yaml:10:19
        filler-at-most: "130 %" is stricter than "g-0", which has no such limit
        → list the grades best first
      press/grades.yaml:10:19
        filler-at-most: "130 %" is more than the whole
        → write at most 100 %"
    `);
  });
});

describe('a choice', () => {
  it('may be of one candidate, or of one for each part of a group', async () => {
    expect(await check(choice('  candidates: [a-2]\n'))).toBe('');
    const group = choice('  candidates: [a-1, a-3]\n  group: both\n');
    const later = group['press/ledger/choices.yaml'].replace('03-05', '03-06');
    expect(await check({ ...group, 'press/ledger/choices.yaml': later })).toBe('');
  });

  it('names each part once, what was known by then, and the whole group', async () => {
    expect(await check(choice('  candidates: [a-1, a-2]\n'))).toMatchInlineSnapshot(`
      "press/ledger/choices.yaml:4:21
        candidates: "a-2" and "a-1" are both for part "gib"
        → keep one"
    `);
    expect(await check(choice('  candidates: [a-1, a-3]\n'))).toMatchInlineSnapshot(`
      "press/ledger/choices.yaml:4:15
        candidates: of 2 parts, and no group holds them together
        → name the group in "group", or write one choice for each part
      press/ledger/choices.yaml:4:21
        candidates: "a-3" was noted on 2025-03-06, after the choice (2025-03-05)
        → correct the wrong one of the two dates"
    `);
    expect(await check(choice('  candidates: [a-1]\n  group: both\n'))).toMatchInlineSnapshot(`
      "press/ledger/choices.yaml:4:15
        candidates: none for "nut" of group "both"
        → name one candidate for each part of the group"
    `);
  });
});

describe('what an entry shows', () => {
  const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';
  it('had been noted by its day, and exists', async () => {
    const shown = (text: string) => ({ [ENTRY]: ['<Tally />', text] as const });
    expect(await check({ ...survey, ...shown('<Survey of="first" />') })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Survey> of "first": there is no finding on or before 2025-04-13
        → add it to ledger/findings, or take the component out"
    `);
    expect(
      await check({ ...choice('  candidates: [a-1]\n'), ...shown('<Choice of="gib" />') }),
    ).toBe('');
    expect(await check(shown('<Choice of="nut" />'))).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        <Choice> of "nut": there is no candidate on or before 2025-04-13
        → add it to ledger/candidates, or take the component out"
    `);
    expect(await check(shown('<Choice of="nutt" />'))).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:9
        unknown part or group of parts "nutt"
        → did you mean "nut"?"
    `);
  });
});
