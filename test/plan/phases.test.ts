import { describe, expect, test } from 'vitest';
import { hoursRatio, phaseFigures } from '../../src/plan/phases.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { toldIn } from '../words/told.ts';

const project = (phase: Written = {}) =>
  projectOf({
    lists: {
      phases: [
        {
          id: 'strip',
          name: 'Strip',
          summary: 'Everything comes apart.',
          'planned-start': '2025-03-01',
          'planned-finish': '2025-03-31',
          'planned-hours': '10:00',
          ...phase,
        },
      ],
      hours: [
        ['h-1', '2025-03-03', '4:00'],
        ['h-2', '2025-03-20', '6:00'],
        ['h-3', '2025-04-02', '1:30'],
      ].map(([id, date, hours]) => ({
        ...({ id, date, hours } as Record<'id' | 'date' | 'hours', string>),
        phase: 'strip',
        work: 'cleaning',
        what: 'Cleaned',
      })),
    },
  });

const on = (day: string, phase: Written = {}) => {
  const [figures] = project(phase).asOf(day as Day).phases;
  if (figures === undefined) throw new Error('the phase is not in the book');
  return figures;
};

describe('a phase', () => {
  test('is not started before its first hours row, whatever was planned', () => {
    expect(on('2025-03-02')).toMatchObject({
      state: 'not started',
      start: undefined,
      last: undefined,
      over: -600,
      late: undefined,
    });
  });

  test('is under way from its first hours row on', () => {
    expect(on('2025-03-03')).toMatchObject({
      state: 'under way',
      start: '2025-03-03',
      last: '2025-03-03',
      over: -360,
    });
  });

  test('is over its plan by what was worked beyond it, and not at the plan itself', () => {
    expect(on('2025-03-31')).toMatchObject({ last: '2025-03-20', over: 0 });
    expect(on('2025-04-02')).toMatchObject({ last: '2025-04-02', over: 90 });
    expect(toldIn(on('2025-04-02').hours.how)).toBe('sum of 3 hours rows');
  });

  test('is late while it is open by the days past its planned finish, and not on that day', () => {
    expect(on('2025-03-31').late).toBeUndefined();
    expect(on('2025-04-01').late).toBe(1);
    expect(on('2025-05-01').late).toBe(31);
  });

  test('is late for good by the day it was called done', () => {
    const done = { finished: '2025-04-05' };
    expect(on('2025-04-04', done)).toMatchObject({ state: 'under way', late: 4 });
    expect(on('2025-04-05', done)).toMatchObject({ state: 'finished', late: 5 });
    expect(on('2025-12-31', done)).toMatchObject({ finished: '2025-04-05', late: 5 });
  });

  test('is early by a negative number of days, and on time by none', () => {
    expect(on('2025-12-31', { finished: '2025-03-25' }).late).toBe(-6);
    expect(on('2025-12-31', { finished: '2025-03-31' }).late).toBe(0);
  });

  test('that is late and never started is late all the same', () => {
    const [phase] = project().phases;
    expect(phase && phaseFigures(phase, [], '2025-04-10' as Day)).toMatchObject({
      state: 'not started',
      late: 10,
    });
  });
});

describe('hours worked for each hour planned', () => {
  test('are told of a finished phase: 11.5 for 10 planned', () => {
    expect(hoursRatio(on('2025-04-05', { finished: '2025-04-02' }))).toBe(1.15);
  });

  test('are not told while it goes on, or where no hours were planned', () => {
    expect(hoursRatio(on('2025-04-05'))).toBeUndefined();
    expect(
      hoursRatio(on('2025-04-05', { finished: '2025-04-02', 'planned-hours': '0:00' })),
    ).toBeUndefined();
  });
});
