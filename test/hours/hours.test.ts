import { describe, expect, test } from 'vitest';
import { runningHours, sumHours } from '../../src/hours/hours.ts';
import { say } from '../../src/words/said.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { toldIn } from '../words/told.ts';

const phase = {
  summary: 'Work.',
  'planned-start': '2025-03-01',
  'planned-finish': '2025-03-31',
  'planned-hours': '10:00',
};
const phases = [
  { id: 'strip', name: 'Strip', ...phase },
  { id: 'rebuild', name: 'Rebuild', ...phase },
];
const row = (id: string, hours: string, rest: Written): Written => ({
  id,
  date: '2025-03-02',
  hours,
  phase: 'strip',
  work: 'cleaning',
  what: 'Cleaned',
  ...rest,
});
const project = projectOf({
  lists: {
    phases,
    hours: [
      row('h-1', '2:30', {}),
      row('h-2', '0:45', { who: 'helper', work: 'fitting' }),
      row('h-3', '1:00', { phase: 'rebuild', date: '2025-03-09' }),
    ],
  },
});
const groups = (name: 'hoursByPhase' | 'hoursByWork' | 'hoursByPerson') =>
  project.now[name].groups.map((group) => [
    toldIn(group.name),
    group.figure.value,
    group.figure.rows.length,
  ]);

describe('hours', () => {
  test('without a person are those of the first one named', () => {
    expect(project.hours.map(({ who }) => who)).toEqual(['ada', 'helper', 'ada']);
  });

  test('are broken down by phase, by kind of work and by person, in the order those are named', () => {
    expect(groups('hoursByPhase')).toEqual([
      ['Strip', 195, 2],
      ['Rebuild', 60, 1],
    ]);
    expect(groups('hoursByWork')).toEqual([
      ['cleaning', 210, 2],
      ['fitting', 45, 1],
    ]);
    expect(groups('hoursByPerson')).toEqual([
      ['Ada Venn', 210, 2],
      ['helper', 45, 1],
    ]);
  });

  test('have one total, however they are broken down', () => {
    const { hoursByPhase, hoursByWork, hoursByPerson } = project.now;
    expect(hoursByPhase.total).toMatchObject({ value: 255 });
    expect(hoursByWork.total.value).toBe(255);
    expect(hoursByPerson.total.value).toBe(255);
  });

  test('run on from row to row', () => {
    expect(runningHours(project.hours).map(({ row: { id }, total }) => [id, total])).toEqual([
      ['h-1', 150],
      ['h-2', 195],
      ['h-3', 255],
    ]);
  });

  test('of one row say so, and of none are nothing', () => {
    expect(say(sumHours(project.hours).how, wordsOf('en'))).toMatch(/^sum of \d+ hours rows$/);
    expect(say(sumHours(project.hours.slice(0, 1)).how, wordsOf('en'))).toBe('sum of 1 hours row');
    expect(sumHours([])).toMatchObject({ value: 0, rows: [] });
    expect(say(sumHours([]).how, wordsOf('de'))).toBe('Summe aus 0 Stundenzeilen');
  });
});
