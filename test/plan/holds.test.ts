import { expect, test } from 'vitest';
import { dayNumber } from '../../src/plan/day-number.ts';
import { planOn } from '../../src/plan/project-plan.ts';
import type { Written } from '../book/project-of.ts';
import { asDay, plannedProject } from './planned-project.ts';

const wait = (id: string, rest: Written): Written => ({
  ...{ id, date: '2025-02-01', phase: 'spindle', for: 'weather', what: `Wait ${id}` },
  ...rest,
});
const belt = { id: 'belt', name: 'A belt', system: 'drive', source: 'new', phase: 'table' };
const on = (project: ReturnType<typeof plannedProject>, day: string) =>
  planOn(project.asOf(asDay(day)));

test('a wait holds from its day on until the day it ended, and how long is counted in days', () => {
  const project = plannedProject({ waits: [wait('w-1', { until: '2025-02-11' })] });
  expect(on(project, '2025-01-31').holds).toEqual([]);
  expect(on(project, '2025-02-01').holds).toMatchObject([{ id: 'w-1', days: 0 }]);
  expect(on(project, '2025-02-10').holds).toMatchObject([{ id: 'w-1', days: 9 }]);
  expect(on(project, '2025-02-11').holds).toEqual([]);
});

test('the end that came later is not known before, only the day it was expected', () => {
  const ended = wait('w-1', { until: '2025-02-11', expected: '2025-02-20' });
  expect(on(plannedProject({ waits: [ended] }), '2025-02-08').waits).toEqual([
    {
      id: 'w-1',
      phases: ['spindle'],
      from: dayNumber(asDay('2025-02-20')),
      to: dayNumber(asDay('2025-02-20')),
    },
  ]);
});

test('a wait is overdue from the day after the expected one, and then counts as ending tomorrow', () => {
  const project = plannedProject({ waits: [wait('w-1', { expected: '2025-02-05' })] });
  const tomorrow = dayNumber(asDay('2025-02-07'));
  expect(on(project, '2025-02-05').holds).toMatchObject([{ overdue: false }]);
  expect(on(project, '2025-02-06').holds).toMatchObject([{ overdue: true }]);
  expect(on(project, '2025-02-06').waits).toMatchObject([{ from: tomorrow, to: tomorrow }]);
});

test('a wait whose end nobody knows is told and left out of the forecast', () => {
  const plan = on(plannedProject({ waits: [wait('w-1', {})] }), '2025-02-08');
  expect(plan.holds).toMatchObject([{ id: 'w-1', expected: undefined }]);
  expect(plan.waits).toEqual([]);
});

test('a part wanted for an open phase holds it until it is in hand, and one for a finished phase holds nothing', () => {
  const parts = [
    { ...belt, wanted: '2025-01-20', ordered: '2025-02-02', got: '2025-02-09' },
    { ...belt, id: 'brush', phase: 'strip', wanted: '2025-01-20' },
    { ...belt, id: 'oil', phase: undefined, wanted: '2025-01-20' } as unknown as Written,
  ].map((part) => JSON.parse(JSON.stringify(part)) as Written);
  const project = plannedProject({ parts });
  expect(on(project, '2025-02-08').holds).toMatchObject([
    { kind: 'part', id: 'belt', phases: ['table'], days: 19, expected: undefined },
  ]);
  expect(on(project, '2025-02-09').holds).toEqual([]);
});

test('a part that a wait names is told by the wait alone', () => {
  const parts = [{ ...belt, wanted: '2025-01-20' }];
  const waits = [
    wait('w-1', { phase: 'table', for: 'part', part: 'belt', expected: '2025-03-01' }),
  ];
  expect(on(plannedProject({ parts, waits }), '2025-02-08').holds.map(({ id }) => id)).toEqual([
    'w-1',
  ]);
});

test('parts sent out hold their phases until they are back, and are overdue after their day', () => {
  const preparation = {
    ...{ id: 'z-1', date: '2025-02-01', parts: ['belt'], kind: 'coating', what: 'Coated' },
    ...{ out: 'true', due: '2025-02-10', back: '2025-02-15' },
  };
  const parts = [{ ...belt, got: '2025-01-20' }];
  const project = plannedProject({ parts, preparations: [preparation] });
  expect(on(project, '2025-02-11').holds).toMatchObject([
    { kind: 'preparation', id: 'z-1', phases: ['table'], overdue: true },
  ]);
  expect(on(project, '2025-02-15').holds).toEqual([]);
});

test('a corrected wait goes by the correction from the day that was written', () => {
  const waits = [
    wait('w-1', { expected: '2025-02-20' }),
    wait('w-2', {
      ...{ expected: '2025-03-20', recorded: '2025-02-10' },
      ...{ corrects: 'w-1', because: 'A month slipped' },
    }),
  ];
  const project = plannedProject({ waits });
  expect(on(project, '2025-02-09').holds).toMatchObject([{ id: 'w-1', expected: '2025-02-20' }]);
  expect(on(project, '2025-02-10').holds).toMatchObject([{ id: 'w-1', expected: '2025-03-20' }]);
});
