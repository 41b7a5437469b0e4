import { describe, expect, test } from 'vitest';
import { type Hunt, huntsOn } from '../../src/parts/hunt.ts';
import { wantedOn } from '../../src/parts/wanted.ts';
import { projectOf } from '../book/project-of.ts';
import { workshopLists, workshopOn } from './workshop.ts';

function huntOn(id: string, day: string): Hunt {
  const hunt = huntsOn(workshopOn(day)).hunts.find(({ item }) => item.part.id === id);
  if (hunt === undefined) throw new Error(`no hunt for ${id} on ${day}`);
  return hunt;
}

describe('the hunt for a part', () => {
  test('lasts from the first search or the day it was wanted until it was ordered', () => {
    const { since, firstSearch, found, days, tries } = huntOn('seal', '2025-06-30');
    expect([since, firstSearch, found, days]).toEqual([
      '2025-02-05',
      '2025-02-05',
      '2025-04-01',
      55, // 23 days left of February, 31 of March, 1 of April
    ]);
    expect(tries.rows.map(({ id }) => id)).toEqual(['s-1', 's-2', 's-3']);
  });

  test('lasts until the day that it is looked at on while nothing was found', () => {
    expect(huntOn('catch', '2025-03-31').days).toBe(30);
    expect(huntOn('seal', '2025-03-31')).toMatchObject({ days: 54, found: undefined });
  });

  test('counts its results, and has the newest price that was seen', () => {
    const { results, price } = huntOn('seal', '2025-06-30');
    expect(Object.fromEntries(results)).toEqual({
      none: 1,
      'listed-not-held': 1,
      promised: 0,
      bought: 1,
    });
    expect(price?.price).toEqual({ decimal: '12.50', currency: 'EUR' });
    expect(huntOn('seal', '2025-03-31').price?.price?.decimal).toBe('9.00');
  });

  test('keeps its own phase waiting, until that was called done or the part was found', () => {
    expect(huntOn('catch', '2025-06-30').waiting).toEqual(['build']);
    expect(huntOn('knob', '2025-03-30').waiting).toEqual(['strip']);
    expect(huntOn('knob', '2025-03-31').waiting).toEqual([]);
  });

  test('keeps those phases waiting that a wait names', () => {
    const wait = { phase: 'strip', for: 'part', part: 'catch', what: 'No catch' };
    const { now } = projectOf({
      lists: {
        ...workshopLists,
        waits: [
          { ...wait, id: 'x-1', date: '2025-03-02' },
          { ...wait, id: 'x-2', date: '2025-03-03', phase: 'build', until: '2025-03-09' },
        ],
      },
    });
    const hunt = huntsOn(now).hunts.find(({ item }) => item.part.id === 'catch');
    expect(hunt?.waiting).toEqual(['strip']);
  });
});

test('all hunts together count those that ended and the lists that promised in vain', () => {
  const { hunts, found, tries, notHeld } = huntsOn(workshopOn('2025-06-30'));
  expect(hunts.map(({ item }) => item.part.id)).toEqual(['seal', 'catch', 'knob']);
  expect([found.value, tries.value, notHeld.value]).toEqual([1, 5, 2]);
  expect(notHeld.rows.map(({ id }) => id)).toEqual(['s-1', 's-4']);
});

test('a price that the builder keeps to herself is not seen', () => {
  const searches = workshopLists.searches.map((row) => ({ ...row, withhold: ['price'] }));
  const { now } = projectOf({ lists: { ...workshopLists, searches } });
  expect(huntsOn(now).hunts.map(({ price }) => price)).toEqual([undefined, undefined, undefined]);
});

test('the wanted list has what is still looked for and what is for sale on its day', () => {
  const idsOn = (day: string) => {
    const { wanted, offers } = wantedOn(workshopOn(day));
    return [wanted, offers].map((list) => list.map(({ item }) => item.part.id));
  };
  expect(idsOn('2025-03-31')).toEqual([['seal', 'catch', 'knob'], []]);
  expect(idsOn('2025-04-20')).toEqual([['catch', 'knob'], ['spare']]);
});
