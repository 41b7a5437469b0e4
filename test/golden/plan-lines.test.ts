import { expect, test } from 'vitest';
import { drawPlanLines, type PlanLine, type PlanLines } from '../../src/draw/plan-lines.ts';
import { writeSvg } from '../../src/draw/svg.ts';
import { dayNumber, dayOfNumber } from '../../src/plan/day-number.ts';
import type { Day } from '../../src/time/day.ts';

const day = (text: string) => text as Day;
const days = (from: string, to: string) => ({ from: day(from), to: day(to) });
const none = {
  planned: undefined,
  worked: [],
  finished: undefined,
  forecast: undefined,
  waits: [],
};

const lathe: PlanLines = {
  asOf: day('2025-05-03'),
  marked: '3 May 2025',
  language: 'en-GB',
  marks: [
    { day: day('2025-01-11'), kind: 'entry', label: 'The lathe comes home' },
    { day: day('2025-03-22'), kind: 'entry', label: 'Ways scraped' },
    { day: day('2025-04-05'), kind: 'event', label: 'Chuck sent out' },
  ],
  rows: [
    {
      ...none,
      name: 'Strip and clean',
      note: '31:30 of 24:00 h',
      planned: days('2025-01-11', '2025-02-09'),
      worked: [days('2025-01-11', '2025-01-26'), days('2025-02-15', '2025-02-15')],
      finished: day('2025-02-15'),
    },
    {
      ...none,
      name: 'Spindle & bearings',
      note: '12:00 of 40:00 h',
      planned: days('2025-02-10', '2025-04-27'),
      worked: [days('2025-03-01', '2025-04-20')],
      forecast: { low: day('2025-06-14'), middle: day('2025-07-05'), high: day('2025-08-23') },
      waits: [
        {
          label: 'waits for a bearing pair, 24 May to 14 June',
          ...days('2025-04-05', '2025-05-24'),
          atMost: day('2025-06-14'),
        },
        { label: 'waits for the grinder', ...days('2025-04-20', '2025-05-10') },
      ],
    },
    {
      ...none,
      name: 'Finished',
      note: '16 August 2025',
      forecast: { low: day('2025-07-12'), middle: day('2025-08-16'), high: day('2025-10-25') },
    },
  ],
};

/** One piece to a line, so that a change shows as the lines it touches. */
const written = (lines: PlanLines) =>
  `${writeSvg(drawPlanLines(lines).root).replaceAll('><', '>\n<')}\n`;

test('the plan is drawn to the byte as it was when it was looked at', async () => {
  await expect(written(lathe)).toMatchFileSnapshot('files/plan-lines.svg');
});

const rowAt = (index: number): PlanLine => ({
  ...none,
  name: `Phase ${index}`,
  note: '10:00 h planned',
  planned: {
    from: dayOfNumber(dayNumber(day('2020-01-01')) + 20 * index),
    to: dayOfNumber(dayNumber(day('2020-01-01')) + 20 * index + 30),
  },
});

test('three hundred phases are rows of one height, and the years are named again every twelve', () => {
  const rows = Array.from({ length: 300 }, (_, index) => rowAt(index));
  const svg = written({ ...lathe, rows, marks: [] });
  const heights = [...svg.matchAll(/y="(\d+)">Phase (\d+)</g)].map((match) => Number(match[1]));
  expect(heights).toHaveLength(300);
  const steps = heights.slice(1).map((height, index) => height - (heights[index] ?? 0));
  expect(new Set(steps)).toEqual(new Set([48, 48 + 22]));
  expect(svg.match(/>2025</g)).toHaveLength(25);
});

test('nothing lies outside the sheet', () => {
  const places = [...written(lathe).matchAll(/[x12]="([\d.-]+)%"/g)].map((match) =>
    Number(match[1]),
  );
  expect(places.length).toBeGreaterThan(30);
  expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...places)).toBeLessThanOrEqual(100);
});

test('a plan of a few days in one month names its first day', () => {
  const svg = written({
    ...lathe,
    marks: [],
    rows: [{ ...none, name: 'One', note: '', planned: days('2025-05-02', '2025-05-09') }],
  });
  expect(svg).toContain('>2 May 2025<');
});
