import { describe, expect, test } from 'vitest';
import type { Written } from '../book/project-of.ts';
import { figuresOn, order, part } from './budget-project.ts';

const search = (id: string, date: string, price: string, rest: Written = {}): Written => ({
  ...{ id, date, part: 'seal', result: 'listed-not-held', price },
  ...rest,
});
const wanted = (lists: Parameters<typeof figuresOn>[0], day = '2025-05-01') =>
  figuresOn(lists, day).toBuy.map(({ part: { id }, from, price }) => [
    ...[id, from, price?.low.minor, price?.middle.minor, price?.high.minor],
  ]);

describe('a part that is wanted', () => {
  test('costs what was estimated, times how many, between the lowest and the highest', () => {
    const seal = part('seal', {
      ...{ quantity: '2', estimate: '40.00', 'estimate-low': '30.00', 'estimate-high': '55.00' },
    });
    expect(wanted({ parts: [seal] })).toEqual([['seal', 'estimate', 6_000, 8_000, 11_000]]);
    expect(wanted({ parts: [part('seal', { estimate: '40.00' })] })).toEqual([
      ['seal', 'estimate', 4_000, 4_000, 4_000],
    ]);
  });

  test('without an estimate costs the newest price seen by that day, between the ends of all seen', () => {
    const lists = {
      parts: [part('seal')],
      searches: [
        search('s-1', '2025-03-02', '62.00'),
        search('s-2', '2025-03-20', '71.40'),
        search('s-3', '2025-04-02', '66.00'),
      ],
    };
    expect(wanted(lists, '2025-03-01')).toEqual([
      ['seal', 'nothing', undefined, undefined, undefined],
    ]);
    expect(wanted(lists, '2025-03-02')).toEqual([['seal', 'search', 6_200, 6_200, 6_200]]);
    expect(wanted(lists, '2025-04-02')).toEqual([['seal', 'search', 6_200, 6_600, 7_140]]);
    expect(figuresOn(lists, '2025-04-02').toBuy[0]?.search?.id).toBe('s-3');
  });

  test('does not use a price that is withheld, nor one that no rate brings into the currency', () => {
    const searches = [
      search('s-1', '2025-03-02', '62.00', { withhold: ['price'] }),
      search('s-2', '2025-03-03', '50.00 EUR'),
    ];
    expect(wanted({ parts: [part('seal')], searches })[0]?.[1]).toBe('nothing');
  });

  test('is not bought twice: ordered, got, or named by an order, it is on the list no more', () => {
    const estimate = '10.00';
    const parts = [
      part('ordered', { estimate, ordered: '2025-04-01' }),
      part('got', { estimate, got: '2025-04-01' }),
      part('named', { estimate }),
      part('later', { estimate, wanted: '2025-06-01' }),
    ];
    const orders = [order('o-1', '2025-04-01', '12.00', { parts: ['named'] })];
    const ids = (day: string) => wanted({ parts, orders }, day).map(([id]) => id);
    expect(ids('2025-03-31')).toEqual(['ordered', 'got', 'named']);
    expect(ids('2025-04-01')).toEqual([]);
    expect(ids('2025-06-01')).toEqual(['later']);
  });

  test('is wanted again when its order was closed before anything was paid', () => {
    const parts = [part('seal', { estimate: '10.00' })];
    const orders = [order('o-1', '2025-04-01', '12.00', { parts: ['seal'], closed: '2025-04-20' })];
    expect(wanted({ parts, orders }, '2025-04-19')).toEqual([]);
    expect(wanted({ parts, orders }, '2025-04-20')).toHaveLength(1);
  });
});
