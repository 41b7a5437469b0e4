import { describe, expect, test } from 'vitest';
import type { View } from '../../src/book/types.ts';
import { type Chain, chainOf } from '../../src/parts/chain.ts';
import { stepNote, whereText } from '../../src/parts/part-words.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf } from '../book/project-of.ts';
import { workshopLists, workshopOn } from './workshop.ts';

const words = wordsOf('en');
const { steps: stepWords } = words.parts.part;

function chainOn(id: string, day: string): Chain {
  const chain = chainOf(workshopOn(day), id);
  if (chain === undefined) throw new Error(`${id} was not known on ${day}`);
  return chain;
}
const linesOf = ({ steps }: Chain) =>
  steps.map(({ date, what, row, days }) =>
    `${date} ${stepWords[what]} ${row ?? '-'} ${days ?? ''}`.trim(),
  );

describe('the chain of a part', () => {
  test('has every step in order of date, with its row and the days since the step before', () => {
    expect(linesOf(chainOn('table', '2025-06-30'))).toEqual([
      '2025-01-01 found -',
      '2025-01-10 taken table 9',
      '2025-02-10 sent out w-1 31',
      '2025-03-02 back w-1 20',
      '2025-03-05 work begun w-3 3',
      '2025-03-20 work done w-3 15',
      '2025-04-02 fitted table 13',
    ]);
  });

  test('begins with the first search where the part came with no machine', () => {
    expect(linesOf(chainOn('seal', '2025-06-30'))).toEqual([
      '2025-02-05 first searched for s-1',
      '2025-02-10 wanted seal 5',
      '2025-04-01 ordered seal 50',
      '2025-04-11 bought seal 10',
    ]);
    expect(linesOf(chainOn('guard', '2025-06-30'))).toEqual([
      '2025-03-15 made guard',
      '2025-03-16 fitted guard 1',
    ]);
  });

  test('ends with the day that it is looked at on', () => {
    expect(linesOf(chainOn('table', '2025-03-01')).at(-1)).toBe('2025-02-10 sent out w-1 31');
    expect(chainOf(workshopOn('2025-02-09'), 'seal')).toBeUndefined();
  });

  test('says what was found by a survey, and what was chosen and why', () => {
    const { now } = projectOf({
      lists: {
        ...workshopLists,
        surveys: [{ id: 'first', name: 'First look', date: '2024-12-20' }],
        findings: [
          { id: 'f-1', date: '2024-12-20', survey: 'first', part: 'table', found: 'wear' },
        ],
        candidates: [
          {
            ...{ id: 'k-1', date: '2025-01-02', part: 'table', source: 'base' },
            ...{ availability: 'in-hand', risk: 'low' },
          },
        ],
        choices: [{ id: 'd-1', date: '2025-01-05', candidates: ['k-1'], because: 'It is flat' }],
      },
    });
    const steps = chainOf(now, 'table')?.steps.slice(0, 2);
    expect(steps?.map((step) => [stepWords[step.what], step.row, stepNote(step, words)])).toEqual([
      ['found', 'f-1', 'by a survey'],
      ['chosen', 'd-1', 'It is flat'],
    ]);
  });
});

describe('where a part is', () => {
  const whereOf = (view: View, id: string) => {
    const chain = chainOf(view, id);
    return chain && whereText(chain.where, words);
  };

  test.each([
    ['table', '2025-01-10', 'on the shelf'],
    ['table', '2025-02-10', 'sent out for blasting'],
    ['table', '2025-03-02', 'on the shelf'],
    ['table', '2025-04-02', 'on the machine'],
    ['drum', '2025-05-01', 'sent out for machining'],
    ['seal', '2025-02-10', 'wanted'],
    ['seal', '2025-04-01', 'ordered'],
    ['spare', '2025-04-20', 'on the shelf, for sale'],
  ])('%s on %s: %s', (id, day, text) => {
    expect(whereText(chainOn(id, day).where, words)).toBe(text);
  });

  test('is the machine that it came with while it has no step, and gone once it is sold', () => {
    const lists = {
      ...workshopLists,
      parts: [
        { id: 'belt', name: 'Belt', system: 'drive', source: 'donor' },
        { id: 'motor', name: 'Motor', system: 'drive', source: 'donor', sold: '2025-04-01' },
      ],
      searches: [],
      preparations: [],
    };
    const { now } = projectOf({ lists });
    expect(whereOf(now, 'belt')).toBe('still on A second press');
    expect(whereOf(now, 'motor')).toBe('gone: sold');
  });

  test('a corrected preparation counts from the day it was said, under the id of its first row', () => {
    const [, second = {}] = workshopLists.preparations;
    const corrected = {
      ...second,
      ...{ id: 'w-9', corrects: 'w-2', because: 'It came back', recorded: '2025-05-20' },
      back: '2025-05-03',
    };
    const project = projectOf({
      lists: {
        ...workshopLists,
        preparations: [...workshopLists.preparations, corrected],
      },
    });
    expect(project.preparations.map(({ id, rowId }) => `${id} ${rowId}`)).toContain('w-2 w-9');
    expect(whereOf(project.now, 'drum')).toBe('on the shelf');
  });
});
