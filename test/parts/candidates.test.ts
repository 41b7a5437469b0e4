import { describe, expect, test } from 'vitest';
import type { ShareOf } from '../../src/parts/candidate-cost.ts';
import { weighCandidates } from '../../src/parts/candidates.ts';
import { comparisonDay, decisionsOn, subjectOf } from '../../src/parts/choices.ts';
import { compareCandidates, subjectsOn } from '../../src/parts/comparison.ts';
import type { Day } from '../../src/time/day.ts';
import type { Written } from '../book/project-of.ts';
import { surveyedProject } from './surveyed-project.ts';

const day = (text: string) => text as Day;
const candidate = (id: string, source: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', part: 'sill', source, availability: 'in-hand', risk: 'low' },
  ...rest,
});
const project = surveyedProject({
  U: '0.03 mm',
  readings: { 'r-1': '0.90' },
  findings: [{ found: 'thin', readings: ['r-1'] }],
  project: { rules: { labourRate: '16.00' } },
  lists: {
    groups: [{ id: 'edge', name: 'Edge', parts: ['sill', 'floor'], because: 'One seam.' }],
    candidates: [
      candidate('keep', 'base', { price: '5.00', hours: '2:20' }),
      candidate('other', 'donor', { value: '40.00', hours: '6:00' }),
      candidate('new-one', 'made', { price: '20.00 EUR', hours: '9:00' }),
      candidate('floor-keep', 'base', { part: 'floor', price: '7.50', hours: '1:00' }),
      candidate('floor-new', 'made', {
        part: 'floor',
        price: '30.00',
        hours: '4:00',
        date: '2025-05-01',
      }),
    ],
    choices: [
      { id: 'ch-1', date: '2025-03-10', candidates: ['keep'], because: 'It rings.' },
      {
        id: 'ch-2',
        date: '2025-04-10',
        candidates: ['keep', 'floor-keep'],
        group: 'edge',
        because: 'One seam.',
      },
    ],
    rates: [
      { id: 'x-1', date: '2025-02-01', from: 'EUR', to: 'GBP', rate: '0.85', source: 'the bank' },
    ],
  },
});
const on = (text: string) => ({ day: day(text), language: 'en-GB' });
const sill = (text: string, shareOf?: ShareOf) =>
  weighCandidates(project, 'sill', { ...on(text), shareOf });

describe('the candidates for a part', () => {
  test('show price and hours, and both together at the stated rate: £5.00 and 2:20 h at £16.00 make £42.33', () => {
    const [keep] = sill('2025-03-01');
    expect(keep?.cost).toEqual({
      from: 'price',
      money: { minor: 500, currency: 'GBP' },
      how: 'price',
    });
    // 2⅓ h · £16.00 = £37.333…
    expect(keep?.labour?.money.minor).toBe(3733);
    expect(keep?.together?.minor).toBe(4233);
  });

  test('bear a donor’s share where one is worked out, else the value stated for them', () => {
    const [, stated] = sill('2025-03-01');
    expect(stated?.cost).toMatchObject({ from: 'value', money: { minor: 4000 } });
    const [keep, shared] = sill('2025-03-01', () => ({ minor: 1234, currency: 'GBP' }));
    expect(shared?.cost).toMatchObject({ from: 'share', money: { minor: 1234 } });
    expect(keep?.cost.from).toBe('price');
  });

  test('convert at the rate of their day, with its working', () => {
    expect(sill('2025-03-01')[2]?.cost).toMatchObject({
      money: { minor: 1700 },
      how: 'price €20.00 × 0.85',
    });
  });

  test('have the grade and the thickness of the newest survey of their own version', () => {
    const [keep, other] = sill('2025-03-01');
    expect(keep?.condition?.graded.grades.map(({ id }) => id)).toEqual(['to-mend']);
    expect(keep?.remaining?.value).toBeCloseTo(60, 10);
    expect(other?.condition).toBeUndefined();
  });
});

describe('a choice', () => {
  const subject = { id: 'sill', parts: ['sill'], isGroup: false };
  test('stands until the next one, and stays listed with the day it was changed', () => {
    const told = (text: string) =>
      decisionsOn(project, subject, day(text)).map(({ choice, changed }) => [choice.id, changed]);
    expect(told('2025-03-09')).toEqual([]);
    expect(told('2025-03-10')).toEqual([['ch-1', undefined]]);
    expect(told('2025-04-10')).toEqual([
      ['ch-2', undefined],
      ['ch-1', '2025-04-10'],
    ]);
  });

  test('keeps the comparison at its own day until a candidate is added', () => {
    const edge = subjectOf(project, 'edge');
    if (!edge) throw new Error('the group is missing');
    expect(comparisonDay(project, edge, day('2025-04-30'))).toBe('2025-04-10');
    expect(comparisonDay(project, edge, day('2025-05-02'))).toBe('2025-05-02');
  });
});

test('a group is added up by source and as chosen; what a source lacks is named', () => {
  const [subject] = subjectsOn(project, day('2025-04-30'));
  if (!subject) throw new Error('there is nothing to compare');
  const { ways } = compareCandidates(project, subject, on('2025-04-30'));
  const told = ways.map(({ source, money, hours, without }) => [
    source?.id,
    money?.minor,
    hours,
    without,
  ]);
  expect(told).toEqual([
    ['base', 1250, 200, []],
    ['donor', 4000, 360, ['floor']],
    ['made', 1700, 540, ['floor']],
    [undefined, 1250, 200, []],
  ]);
});
