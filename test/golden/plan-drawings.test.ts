import { expect, test } from 'vitest';
import { drawEarned } from '../../src/draw/earned-curve.ts';
import { drawFinishDays } from '../../src/draw/finish-days.ts';
import { drawForecastMoves } from '../../src/draw/forecast-moves.ts';
import { drawPlanLines } from '../../src/draw/plan-lines.ts';
import { planLinesOf } from '../../src/draw/plan-rows.ts';
import { type Drawing, writeSvg } from '../../src/draw/svg.ts';
import { drawWeekHours } from '../../src/draw/week-hours.ts';
import { hoursByWeek } from '../../src/hours/hours-by-time.ts';
import { dayNumber } from '../../src/plan/day-number.ts';
import type { Forecast } from '../../src/plan/forecast-types.ts';
import { earnedOn } from '../../src/plan/project-earned.ts';
import { asDay, plannedProject } from '../plan/planned-project.ts';

const project = plannedProject({
  waits: [
    {
      ...{ id: 'w-1', date: '2025-01-20', until: '2025-02-01', phase: 'spindle' },
      ...{ for: 'weather', what: 'A day without frost, of which there are few' },
    },
    {
      ...{ id: 'w-2', date: '2025-02-01', expected: '2025-03-01', phase: 'table' },
      ...{ for: 'other', what: 'The grinder' },
    },
  ],
  parts: ['a', 'b'].map((id) => ({
    ...{ id, name: `Bolt ${id}`, system: 'drive', source: 'new' },
    ...{ phase: 'paint', wanted: '2025-02-01' },
  })),
});
const view = project.asOf(asDay('2025-02-08'));
const number = (text: string) => dayNumber(asDay(text));
const range = (low: string, middle: string, high: string) => ({
  ...{ low: number(low), middle: number(middle), high: number(high) },
});

const forecast: Forecast = {
  ...{ kind: 'forecast', asOf: number('2025-02-08') },
  finish: range('2025-04-05', '2025-04-19', '2025-05-17'),
  ...{ left: { low: 1, middle: 2, high: 3 }, phases: [], drivers: [], ratios: [] },
  histogram: [20, 60, 40, 10].map((draws, index) => ({
    ...{ from: number('2025-04-01') + 14 * index, to: number('2025-04-14') + 14 * index, draws },
  })),
};
const moves = [
  { day: asDay('2025-02-08'), finish: range('2025-04-05', '2025-04-19', '2025-05-17') },
  { day: asDay('2025-03-08'), finish: range('2025-04-12', '2025-04-26', '2025-05-10') },
];
const goals = { planned: asDay('2025-03-08'), finished: asDay('2025-05-03') };

const drawings: Readonly<Record<string, Drawing | undefined>> = {
  'earned-curve': drawEarned(earnedOn(view)?.curve ?? [], 'en-GB'),
  'week-hours': drawWeekHours(hoursByWeek(view.hours), 'en-GB'),
  'finish-days': drawFinishDays(forecast, 'en-GB'),
  'forecast-moves': drawForecastMoves(moves, goals, 'en-GB'),
  'plan-of-a-project': drawPlanLines(planLinesOf(view, 'en-GB')),
};

test.each(Object.entries(drawings))(
  '%s is drawn to the byte as it was when it was looked at',
  async (name, drawing) => {
    if (drawing === undefined) throw new Error('nothing was drawn');
    const written = `${writeSvg(drawing.root).replaceAll('><', '>\n<')}\n`;
    await expect(written).toMatchFileSnapshot(`files/${name}.svg`);
  },
);

test.each(Object.entries(drawings))('nothing of %s lies outside the sheet', (_, drawing) => {
  const places = [...writeSvg(drawing?.root ?? never()).matchAll(/ [x12]+="([\d.-]+)%"/g)].map(
    (match) => Number(match[1]),
  );
  expect(places.length).toBeGreaterThan(4);
  expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...places)).toBeLessThanOrEqual(100);
});

function never(): never {
  throw new Error('nothing was drawn');
}
