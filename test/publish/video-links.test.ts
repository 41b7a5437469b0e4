import { describe, expect, test } from 'vitest';
import { addressesOf } from '../../src/publish/address.ts';
import { descriptionLines, type MomentLink, momentLinks } from '../../src/publish/video-links.ts';
import { projectOf } from '../book/project-of.ts';

const ENTRY = 'https://shed.example/drill-press/log/2025-03-01-day/';
const PLAY = 'https://shed.example/drill-press/specs/play/';
const NUT = 'https://shed.example/drill-press/parts/nut/';

const LABELS = ['Play as found, with the indicator on the flange', 'A nut', 'Tea'];
const links: readonly MomentLink[] = [
  { seconds: 40, label: LABELS[0] ?? '', address: PLAY },
  { seconds: 272, label: LABELS[1] ?? '', address: NUT },
  { seconds: 3872, label: LABELS[2] ?? '', address: ENTRY },
];

test('a moment leads to its spec, to its part, or to the entry itself, in order of time', () => {
  const project = projectOf({
    lists: {
      specs: [
        {
          ...{ id: 'play', name: 'Play', about: 'Side play.', system: 'ram' },
          ...{ quantity: 'length', unit: 'mm' },
        },
      ],
      sources: [{ id: 'base', kind: 'base', name: 'The press' }],
      parts: [{ id: 'nut', name: 'Nut', system: 'screw', source: 'base' }],
      phases: [
        {
          ...{ id: 'teardown', name: 'Teardown', summary: 'Apart.' },
          ...{ 'planned-start': '2025-03-01', 'planned-finish': '2025-03-31' },
          'planned-hours': '12:00',
        },
      ],
    },
    entries: [
      {
        ...{ title: 'Day', date: '2025-03-01', phase: 'teardown', summary: 'A day.' },
        video: 'https://clips.example/7',
        moments: [
          { at: '1:04:32', label: 'Tea' },
          { at: '4:32', label: 'A nut', part: 'nut' },
          { at: '0:40', label: LABELS[0] ?? '', spec: 'play' },
        ],
      },
    ],
  });
  const [entry] = project.entries;
  if (entry === undefined) throw new Error('there is no entry');
  expect(momentLinks(project, entry, addressesOf('https://shed.example/'))).toEqual(links);
});

describe('lines for a description', () => {
  const lines = (most: number) => descriptionLines(links, ENTRY, most);

  test('have the entry first, then time, label and address; an address is not said twice', () => {
    expect(lines(5000)).toEqual({
      left: 0,
      text: `${ENTRY}
0:40 ${LABELS[0]} ${PLAY}
4:32 A nut ${NUT}
1:04:32 Tea`,
    });
  });

  test('are whole at just their length, and one character less cuts the labels', () => {
    const whole = lines(5000).text.length;
    expect(lines(whole)).toEqual(lines(5000));
    expect(lines(whole - 1)).toEqual({
      left: 0,
      text: lines(5000).text.replace(LABELS[0] ?? '', 'Play as found, with the indicator on th…'),
    });
  });

  test('leave out the last moments where cut labels are not enough, and say how many', () => {
    const two = `${ENTRY}\n0:40 Play as found, with the… ${PLAY}\n4:32 A nut ${NUT}`;
    expect(lines(two.length)).toEqual({ left: 1, text: two });
    expect(lines(ENTRY.length)).toEqual({ left: 3, text: ENTRY });
  });

  test('never are longer than they may be, down to the address alone', () => {
    for (let most = 400; most >= ENTRY.length; most--) {
      const { text, left } = lines(most);
      expect(text.length).toBeLessThanOrEqual(most);
      expect(text.split('\n')).toHaveLength(4 - left);
    }
  });

  test('do not cut a label in the middle of a character', () => {
    const label = `${'x'.repeat(22)}🔧🔧🔧`;
    const { text } = descriptionLines([{ seconds: 1, label, address: ENTRY }], ENTRY, 82);
    expect(text.split('\n')[1]).toBe(`0:01 ${'x'.repeat(22)}…`);
  });
});
