import { describe, expect, test } from 'vitest';
import { earnedRows } from '../../src/plan/earned-rows.ts';
import { floatsNow, plannedFloats } from '../../src/plan/floats.ts';
import type { Forecast } from '../../src/plan/forecast-types.ts';
import { hoursLeft, meanPace } from '../../src/plan/hours-left.ts';
import { earnedOn } from '../../src/plan/project-earned.ts';
import { forecastOn } from '../../src/plan/project-forecast.ts';
import { planOn } from '../../src/plan/project-plan.ts';
import { wordsOf } from '../../src/words/words.ts';
import { asDay, plannedPhase, plannedProject } from './planned-project.ts';

const view = plannedProject().asOf(asDay('2025-02-08'));

describe('the plan of a day', () => {
  test('has the hours and the state of each phase up to that day, and lags in days', () => {
    expect(planOn(view).phases).toMatchObject([
      { id: 'strip', planned: 600, spent: 720, state: 'finished' },
      { id: 'clean', planned: 600, spent: 480, state: 'finished' },
      { id: 'spindle', planned: 600, spent: 120, state: 'under way' },
      { id: 'table', planned: 600, spent: 0, state: 'not started' },
      {
        ...{ id: 'paint', state: 'not started' },
        after: [
          { id: 'spindle', lag: 0 },
          { id: 'table', lag: 3 },
        ],
      },
    ]);
  });

  test('takes three numbers where they are written, and the one for those that are not', () => {
    const phases = [
      plannedPhase(['a', '2025-01-04', '2025-01-18'], { 'planned-hours-most': '20:00' }),
    ];
    const plan = planOn(plannedProject({ phases, hours: [] }).asOf(asDay('2025-02-08')));
    expect(plan.phases[0]?.planned).toEqual({ least: 600, likely: 600, most: 1200 });
  });

  test('has the week of the project file and the days away', () => {
    const project = plannedProject({}, { away: [{ from: '2025-02-10', to: '2025-02-16' }] });
    const { calendar, from, week } = planOn(project.asOf(asDay('2025-02-08')));
    expect(from).toBe('project');
    expect(week).toEqual([0, 0, 0, 0, 0, 240, 0]);
    // 2025-02-08 is day 20127, a Saturday; the next one is away.
    expect([20_127, 20_134, 20_141].map((day) => calendar.minutesOn(day))).toEqual([240, 0, 240]);
  });

  test('takes the average of the last twelve weeks where the project file has no week', () => {
    const project = plannedProject({}, { week: undefined as unknown as string });
    const { from, week } = planOn(project.asOf(asDay('2025-02-08')));
    expect(from).toBe('last weeks');
    // 22 hours on Saturdays, over twelve weeks.
    expect(week[5]).toBeCloseTo((22 * 60) / 12, 9);
    expect(week.filter((minutes) => minutes > 0)).toHaveLength(1);
  });
});

describe('what is left', () => {
  const forecast = forecastOn(view) as Forecast;

  test('is planned × the geometric mean of the ratios 1.2 and 0.8, √0.96, − worked', () => {
    const total = 600 * Math.sqrt(0.96);
    expect(hoursLeft(planOn(view), forecast)).toEqual([
      { id: 'spindle', planned: 600, spent: 120, left: expect.closeTo(total - 120, 9) },
      { id: 'table', planned: 600, spent: 0, left: expect.closeTo(total, 9) },
      { id: 'paint', planned: 600, spent: 0, left: expect.closeTo(total, 9) },
    ]);
  });

  test('goes at the average of the weeks there were: five of four hours and one of two', () => {
    expect(planOn(view).pace.map(({ worked }) => worked)).toEqual([240, 240, 240, 240, 240, 120]);
    expect(meanPace(planOn(view).pace)).toBe(220);
  });

  test('has float in the shorter of two branches only, the lag counted in', () => {
    // 480 min at 220 a week take 15.3 days, 600 take 19.1; paint waits for table and three days more.
    const floats = floatsNow(view);
    const perDay = 220 / 7;
    expect(floats?.days.get('spindle')).toBeCloseTo(600 / perDay + 3 - 480 / perDay, 9);
    expect(floats?.days.get('table')).toBe(0);
    expect(floats?.days.get('paint')).toBe(0);
    expect(floats?.path?.ids).toEqual(['table', 'paint']);
  });
});

test('by the plan a phase has the float that its own planned days and those after it leave', () => {
  // Table ends on 15 February and paint begins on the 23rd, three days after table at the soonest: four are left.
  expect(Object.fromEntries(plannedFloats(view)?.days ?? [])).toEqual({
    ...{ strip: 0, clean: 0, spindle: 0, table: 4, paint: 0 },
  });
});

describe('earned value of the drill press on 8 February', () => {
  const earned = earnedOn(view);

  test('has the sums that a pencil has', () => {
    // Planned by then: strip and clean, one Saturday of three of spindle, one of two of table.
    expect(earned?.planned).toBeCloseTo(600 + 600 + 200 + 300, 9);
    // Two phases are finished and half of spindle is earned.
    expect(earned).toMatchObject({ budget: 3000, earned: 1500, actual: 1320 });
    expect(earned?.costIndex).toBeCloseTo(1500 / 1320, 12);
    expect(earned?.scheduleIndex).toBeCloseTo(1500 / 1700, 12);
    expect(earned?.estimateAtCompletion).toBeCloseTo(2640, 9);
  });

  test('lies on the planned curve between the ends of the fifth and the sixth week', () => {
    // Weeks of the plan end on Fridays; planned by then are 200, 400, 600, 900, 1200 and 1700 minutes.
    expect(earned?.weeks).toBeCloseTo(36 / 7, 9);
    expect(earned?.plannedWeeks).toBe(Math.ceil(64 / 7));
    expect(earned?.schedule.earnedTime).toBeCloseTo(5 + 300 / 500, 9);
    expect(earned?.schedule.scheduleIndex).toBeCloseTo(5.6 / (36 / 7), 9);
  });

  test('shows a dash and says why where a ratio has no meaning', () => {
    const rows = earnedRows(
      earnedOn(plannedProject().asOf(asDay('2025-01-01'))) as never,
      wordsOf('en'),
    );
    const cpi = rows.find(({ short }) => short === 'CPI');
    expect(cpi).toMatchObject({ value: undefined, how: 'nothing is worked yet' });
    expect(rows.map(({ short }) => short)).toEqual([
      ...['BAC', 'PV', 'EV', 'AC', 'CV', 'SV', 'CPI', 'SPI', 'EAC', 'ETC', 'VAC', 'TCPI'],
      ...['ES', 'SV(t)', 'SPI(t)', 'IEAC(t)'],
    ]);
  });
});
