import { describe, expect, test } from 'vitest';
import type { View } from '../../src/book/types.ts';
import type { Day } from '../../src/time/day.ts';
import { told } from '../words/told.ts';
import { projectOf } from './project-of.ts';

const phase = {
  id: 'strip',
  name: 'Strip',
  summary: 'Work.',
  'planned-start': '2025-03-01',
  'planned-finish': '2025-03-31',
  'planned-hours': '10:00',
  finished: '2025-04-01',
};
const reading = (id: string, date: string, state: string, values: string) => ({
  ...{ id, date, state, values, spec: 'load', unit: 'kg', instrument: 'scale' },
});
const project = projectOf({
  lists: {
    phases: [phase],
    hours: [
      { id: 'h-1', date: '2025-03-02', hours: '2:00', phase: 'strip', work: 'cleaning', what: 'A' },
      { id: 'h-2', date: '2025-03-09', hours: '3:00', phase: 'strip', work: 'fitting', what: 'B' },
    ],
    costs: [
      { id: 'c-1', date: '2025-03-02', amount: '5', category: 'part', phase: 'strip', what: 'A' },
      { id: 'c-2', date: '2025-03-09', amount: '7', category: 'fee', phase: 'strip', what: 'B' },
    ],
    parts: [{ id: 'seal', name: 'Seal', system: 'ram', source: 'new', fitted: '2025-03-09' }],
    specs: [
      {
        id: 'load',
        name: 'Load',
        about: 'Load.',
        quantity: 'mass',
        unit: 'kg',
        system: 'ram',
        max: '700 kg',
      },
    ],
    instruments: [{ id: 'scale', name: 'Scale', quantity: 'mass', 'stated-error': '1 kg' }],
    readings: [
      reading('r-1', '2025-03-02', 'as-found', '806'),
      reading('r-2', '2025-03-09', 'after', '691'),
    ],
    searches: [{ id: 's-1', date: '2025-03-09', part: 'seal', result: 'none' }],
  },
});
const on = (day: string): View => project.asOf(day as Day);

describe('a view', () => {
  test('has the rows of its own day and of all days before', () => {
    expect(on('2025-03-08').hours.map(({ id }) => id)).toEqual(['h-1']);
    expect(on('2025-03-09').hours.map(({ id }) => id)).toEqual(['h-1', 'h-2']);
    expect(on('2025-03-08').searches).toEqual([]);
    expect(on('2025-03-09').searches).toHaveLength(1);
  });

  test('sums what was there on its day', () => {
    expect(on('2025-03-08').hoursByPhase.total.value).toBe(120);
    expect(on('2025-03-08').costsByCategory.groups.map(({ key }) => key)).toEqual(['part']);
    expect(on('2025-03-09').costsByCategory.total.value.minor).toBe(1200);
  });

  test('knows a part from its first step on, in the state of the day', () => {
    expect(on('2025-03-08').parts).toEqual([]);
    expect(on('2025-03-09').parts.map(({ state, since }) => [state, since])).toEqual([
      ['fitted', '2025-03-09'],
    ]);
  });

  test('judges a spec by what had been read', () => {
    const before = on('2025-03-08').spec('load');
    expect(before?.latest?.value).toBe(806);
    expect(before?.verdict).toBe('does not meet');
    expect(before?.change).toBeUndefined();

    const after = on('2025-03-09').spec('load');
    expect(after?.verdict).toBe('meets');
    expect(after?.change?.value).toBe(-115);
  });

  test('does not know that a phase will be called done', () => {
    expect(on('2025-03-31').phases[0]?.state).toBe('under way');
    expect(on('2025-04-01').phases[0]?.state).toBe('finished');
  });

  test('is empty before anything happened, and like now ever after', () => {
    const before = on('2020-01-01');
    expect([before.hours, before.costs, before.parts]).toEqual([[], [], []]);
    expect(before.costsByCategory.total.value).toEqual({ minor: 0, currency: 'GBP' });
    expect(before.spec('load')?.latest).toBeUndefined();
    expect(told(on('2099-01-01').hoursByPhase)).toEqual(told(project.now.hoursByPhase));
  });

  test('knows nothing of a spec that is not there', () => {
    expect(project.now.spec('lod')).toBeUndefined();
  });
});
