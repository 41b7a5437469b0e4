import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/time/day.ts';
import { measuredProject } from './measured-project.ts';

const project = measuredProject({
  specs: {
    length: { name: 'Length' },
    width: { name: 'Width' },
    around: { formula: '2*(a + b)', inputs: { a: 'length', b: 'width' } },
  },
  readings: [
    { spec: 'length', values: '20' },
    { spec: 'width', values: '10' },
    {
      ...{ id: 'r-3', spec: 'length', values: '30', corrects: 'r-1' },
      ...{ recorded: '2025-03-10', because: 'Read from the wrong end' },
    },
    {
      ...{ id: 'r-4', spec: 'width', values: '12', corrects: 'r-2' },
      ...{ recorded: '2025-03-20', because: 'The other edge' },
    },
  ],
});
/** To nine decimals: turning units into metres and back leaves dust below them. */
const plain = (value: number | undefined) => Number(value?.toFixed(9));
const latest = (spec: string, day: string) =>
  plain(project.asOf(day as Day).spec(spec)?.latest?.value);

describe('values after a correction of a reading', () => {
  test('are on each day what was known then, read or worked out', () => {
    const days = ['2025-03-09', '2025-03-10', '2025-03-19', '2025-03-20'];
    expect(days.map((day) => latest('length', day))).toEqual([20, 30, 30, 30]);
    expect(days.map((day) => latest('width', day))).toEqual([10, 10, 10, 12]);
    expect(days.map((day) => latest('around', day))).toEqual([60, 80, 80, 84]);
  });

  test('are those of the newest rows in the book, once each', () => {
    const values = (spec: string) => project.values.get(spec)?.map(({ value }) => plain(value));
    expect([values('length'), values('width'), values('around')]).toEqual([[30], [12], [84]]);
  });

  test('leave every reading in the book, those that were replaced too', () => {
    expect(project.readings.map(({ reading }) => [reading.id, reading.until])).toEqual([
      ['r-1', '2025-03-10'],
      ['r-2', '2025-03-20'],
      ['r-3', undefined],
      ['r-4', undefined],
    ]);
  });
});

test('a correction that moves a reading to another day takes it off the old one', () => {
  const moved = measuredProject({
    specs: { length: {} },
    readings: [
      { spec: 'length', values: '20' },
      {
        spec: 'length',
        values: '25',
        date: '2025-03-05',
        corrects: 'r-1',
        because: 'Wrong',
        recorded: '2025-03-06',
      },
    ],
  });
  expect(moved.asOf('2025-03-05' as Day).spec('length')?.latest?.value).toBe(20);
  expect(moved.now.spec('length')?.history.map(({ value }) => value)).toEqual([25]);
});
