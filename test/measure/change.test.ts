import { describe, expect, test } from 'vitest';
import { changeWords } from '../../src/measure/words.ts';
import { wordsOf } from '../../src/words/words.ts';
import type { Written } from '../book/project-of.ts';
import { figuresOf } from './spec-read.ts';

const step = { step: '1 kg' };
const found = (values: string): Written => ({ values, date: '2025-03-01', state: 'as-found' });
const done = (values: string): Written => ({ values, date: '2025-05-01', state: 'after' });

describe('change', () => {
  test('is after minus before, with the u of both', () => {
    const { change } = figuresOf({ instrument: step, readings: [found('806'), done('691')] });
    expect(change?.value).toBe(-115);
    expect(change?.u).toBeCloseTo(Math.sqrt(2 / 12), 12);
    expect(change?.U).toBeCloseTo(1.959964 * Math.sqrt(2 / 12), 5);
    expect(change && changeWords(change, wordsOf('en'))).toBe('changed');
  });

  test('is no measurable change until it is larger than its own U', () => {
    // U of the difference is 1.96·√(2/12) = 0.8002 kg.
    const words = (values: string) => {
      const { change } = figuresOf({ instrument: step, readings: [found('100.0'), done(values)] });
      return change && changeWords(change, wordsOf('en'));
    };
    expect(words('100.8')).toBe('no measurable change');
    expect(words('100.9')).toBe('changed');
    expect(words('99.1')).toBe('changed');
    expect(words('100.0')).toBe('no measurable change');
  });

  test('says nothing of a difference whose uncertainty is not known', () => {
    const { change } = figuresOf({ readings: [found('806'), done('691')] });
    expect(change).toMatchObject({ value: -115, U: undefined, changed: undefined });
    expect(change && changeWords(change, wordsOf('en'))).toBe('uncertainty not known');
  });

  test('has the degrees of freedom of both scatters', () => {
    // Two equal scatters of 3 values each: ν = 4; u = √2·0.1/√3.
    const { change } = figuresOf({ readings: [found('10.1 10.3 10.2'), done('9.1 9.3 9.2')] });
    expect(change?.nu).toBeCloseTo(4, 9);
    expect(change?.U).toBeCloseTo((2.7764451 * Math.SQRT2 * 0.1) / Math.sqrt(3), 7);
  });
});

describe('before and after', () => {
  const ids = (readings: readonly Written[]) => {
    const figures = figuresOf({ instrument: step, readings });
    const idOf = (item: (typeof figures)['latest']) => item?.id;
    return [idOf(figures.asFound), idOf(figures.before), idOf(figures.after), idOf(figures.latest)];
  };
  const at = (date: string, state: string): Written => ({ date, state, values: '10' });

  test('are the as-found reading and the last one after the work', () => {
    expect(
      ids([at('2025-03-01', 'as-found'), at('2025-04-01', 'after'), at('2025-05-01', 'final')]),
    ).toEqual(['r-1', 'r-1', 'r-3', 'r-3']);
  });

  test('prefer a reading called before to the as-found one', () => {
    expect(
      ids([at('2025-03-01', 'as-found'), at('2025-03-20', 'before'), at('2025-04-01', 'after')]),
    ).toEqual(['r-1', 'r-2', 'r-3', 'r-3']);
  });

  test('never take a reading for before that is younger than the one after', () => {
    expect(
      ids([at('2025-03-01', 'as-found'), at('2025-04-01', 'after'), at('2025-05-01', 'before')]),
    ).toEqual(['r-1', 'r-1', 'r-2', 'r-3']);
  });

  test('go by date, not by the order of the file', () => {
    expect(ids([at('2025-04-01', 'after'), at('2025-03-01', 'as-found')])).toEqual([
      'r-2',
      'r-2',
      'r-1',
      'r-1',
    ]);
  });

  test('leave no change before there is a reading after the work', () => {
    const { change, after: none } = figuresOf({ instrument: step, readings: [found('806')] });
    expect([change, none]).toEqual([undefined, undefined]);
  });
});
