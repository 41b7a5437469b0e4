import { describe, expect, test } from 'vitest';
import { measureAll } from '../../src/measure/measure-all.ts';
import type { Instrument, Reading, Spec } from '../../src/model/kinds.ts';

const of = (value: number, unit: string) => ({ value, unit, decimals: 1 });
const spec = (id: string, more: object = {}) =>
  ({ id, name: id, about: '', system: 'bench', quantity: 'length', unit: 'mm', ...more }) as Spec;
const instrument = (id: string, more: object = {}) =>
  ({ id, name: id, quantity: 'length', ...more }) as Instrument;
const reading = (id: string, more: object = {}) =>
  ({
    ...{ id, spec: 'bore', date: '2025-03-01', state: 'as-found', unit: 'mm', instrument: 'gauge' },
    values: [of(8, 'mm'), of(9, 'mm')],
    ...more,
  }) as unknown as Reading;

const measured = (lists: {
  readonly specs?: readonly Spec[];
  readonly instruments?: readonly Instrument[];
  readonly readings?: readonly Reading[];
}) => measureAll({ specs: [], instruments: [], readings: [], checks: new Map(), ...lists });
const ids = (items: readonly { readonly id: string }[]) => items.map(({ id }) => id);

describe('what is measured of a project', () => {
  test('leaves out specs whose units, or those of a limit, measure something else', () => {
    const good = spec('good', { min: of(1, 'in'), nominal: of(2, 'mm'), target: of(2, 'mm') });
    const wrong = [
      spec('unit', { unit: 'kg' }),
      ...['min', 'max', 'nominal', 'target'].map((limit) => spec(limit, { [limit]: of(1, 'kg') })),
    ];
    expect(ids(measured({ specs: [...wrong, good] }).specs)).toEqual(['good']);
  });

  test('leaves out instruments whose units measure something else', () => {
    const good = instrument('good', { step: of(0.01, 'mm'), statedError: of(0.001, 'in') });
    const wrong = ['step', 'statedError', 'certificateU'].map((name) =>
      instrument(name, { [name]: of(1, 'kg') }),
    );
    const { instruments } = measured({ instruments: [...wrong, good, instrument('bare')] });
    expect(ids(instruments)).toEqual(['good', 'bare']);
  });

  test('leaves out readings of no spec, in units of something else, or of which nothing counts', () => {
    const { readings, values } = measured({
      specs: [spec('bore'), spec('wrong', { unit: 'kg' })],
      readings: [
        reading('unknown', { spec: 'stroke' }),
        reading('of-wrong', { spec: 'wrong' }),
        reading('heavy', { unit: 'kg' }),
        reading('none', { excluded: [1, 2] }),
        reading('one', { excluded: [2] }),
        reading('all'),
      ],
    });
    expect(readings.map(({ id, value, n }) => [id, value, n])).toEqual([
      ['one', 8, 1],
      ['all', 8.5, 2],
    ]);
    expect(values.get('bore')).toEqual(readings);
  });

  test('takes an instrument only for what it measures', () => {
    const u = (quantity: string) =>
      measured({
        specs: [spec('bore')],
        instruments: [instrument('gauge', { quantity, certificateU: of(0.2, 'mm') })],
        readings: [reading('one', { values: [of(8, 'mm')] })],
      }).readings[0]?.u;
    expect(u('length')).toBeCloseTo(0.1, 12);
    expect(u('mass')).toBeUndefined();
    const unknown = measured({ specs: [spec('bore')], readings: [reading('one')] });
    expect(unknown.readings.map(({ value }) => value)).toEqual([8.5]);
  });

  test('has a recipe for each spec that is worked out, or all that is wrong with it', () => {
    const { recipes, mistakes, impossible } = measured({
      specs: [
        spec('bore'),
        spec('twice', { formula: '2*b', inputs: { b: 'bore' } }),
        spec('lost', { formula: '2*b', inputs: { b: 'bohr' } }),
      ],
    });
    expect([...recipes.keys()]).toEqual(['twice']);
    expect([...mistakes.keys()]).toEqual(['lost']);
    expect(mistakes.get('lost')).toHaveLength(1);
    expect(impossible).toEqual([]);
  });
});
