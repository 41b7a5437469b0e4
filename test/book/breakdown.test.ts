import { describe, expect, test } from 'vitest';
import { breakDown, type FigureRow } from '../../src/book/figure.ts';
import type { Day } from '../../src/time/day.ts';

interface Weighed extends FigureRow {
  readonly kind: string;
  readonly kg: number;
}

const row = (id: string, kind: string, kg: number): Weighed => ({
  ...{ id, kind, kg, what: id },
  date: '2025-03-01' as Day,
});
const rows = [
  row('a', 'steel', 5),
  row('b', 'brass', 2),
  row('c', 'steel', 1),
  row('d', 'wood', 4),
];

const byKind = (order: readonly string[], some: readonly Weighed[] = rows) =>
  breakDown(
    some,
    { keyOf: ({ kind }) => kind, nameOf: (key) => key.toUpperCase(), order },
    (group) => ({
      value: group.reduce((sum, { kg }) => sum + kg, 0),
      rows: group,
      how: `sum of ${group.length}`,
    }),
  );

describe('breakDown', () => {
  test('sums each group and all of them', () => {
    const { groups, total } = byKind(['brass', 'steel', 'wood']);
    expect(groups.map(({ name, figure }) => [name, figure.value, figure.how])).toEqual([
      ['BRASS', 2, 'sum of 1'],
      ['STEEL', 6, 'sum of 2'],
      ['WOOD', 4, 'sum of 1'],
    ]);
    expect(total).toMatchObject({ value: 12, how: 'sum of 4' });
  });

  test('keeps the rows of a group in their order', () => {
    const steel = byKind([]).groups.find(({ key }) => key === 'steel');
    expect(steel?.figure.rows.map(({ id }) => id)).toEqual(['a', 'c']);
  });

  test('puts groups in the order given, then those not in it as they first appear', () => {
    const keys = (order: readonly string[]) => byKind(order).groups.map(({ key }) => key);
    expect(keys(['wood'])).toEqual(['wood', 'steel', 'brass']);
    expect(keys([])).toEqual(['steel', 'brass', 'wood']);
  });

  test('leaves out groups without rows', () => {
    expect(byKind(['glass', 'steel']).groups.map(({ key }) => key)).not.toContain('glass');
    expect(byKind(['glass'], [])).toMatchObject({ groups: [], total: { value: 0 } });
  });
});
