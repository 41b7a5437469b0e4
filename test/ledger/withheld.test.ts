import { describe, expect, test } from 'vitest';
import { addedSince } from '../../src/book/added.ts';
import { effectOf } from '../../src/book/effect.ts';
import { rowLine } from '../../src/book/row-line.ts';
import { runningTotals } from '../../src/cost/costs.ts';
import { toldOf } from '../../src/ledger/withheld.ts';
import { addDays, type Day } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { toldIn } from '../words/told.ts';

const cost = (id: string, date: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date, amount, category: 'part', phase: 'strip', what: `Thing ${id}` },
  ...rest,
});
const entry = (title: string, date: string): Written => ({
  ...{ title, date, phase: 'strip', summary: 'Something was done.' },
});
const hidden = { withhold: ['amount', 'what', 'note'], note: 'From an uncle' };
/** Amounts of which no difference or sum of two is a third. */
const secret = [130307, 70211, 5099] as const;

const project = projectOf({
  lists: {
    costs: [
      cost('c-1', '2025-03-01', '10.00'),
      cost('c-2', '2025-03-02', '1303.07', hidden),
      cost('c-3', '2025-03-05', '702.11', hidden),
      cost('c-4', '2025-03-06', '50.99', { ...hidden, kind: 'refund' }),
      cost('c-5', '2025-03-10', '3.50', { category: 'fee' }),
    ],
  },
  entries: ['01', '02', '05', '06', '10'].map((day) => entry(`Day ${day}`, `2025-03-${day}`)),
});
const together = 130307 + 70211 - 5099;

describe('withheld amounts', () => {
  test('are in the totals, as one row for their category', () => {
    const { costsByCategory, costsByPhase, costsBySource } = project.now;
    for (const { total } of [costsByCategory, costsByPhase, costsBySource])
      expect(total.value.minor).toBe(1000 + 350 + together);
    expect(costsByCategory.groups.map(({ key, figure }) => [key, figure.value.minor])).toEqual([
      ['part', 1000 + together],
      ['fee', 350],
    ]);
    expect(project.costs.at(-1)).toMatchObject({
      id: 'withheld-part',
      what: '3 rows whose amounts are withheld, together',
      withheldRows: 3,
    });
  });

  test('are tied to no phase, and the group says so', () => {
    const names = project.now.costsByPhase.groups.map(({ name }) => toldIn(name));
    expect(names).toContain('not tied to a phase');
  });

  test('can be got from no running total, entry, breakdown or view, nor from what lies between two', () => {
    const days = Array.from({ length: 12 }, (_, index) => addDays('2025-02-28' as Day, index));
    const views = days.map((day) => project.asOf(day));
    const series = [
      runningTotals(project.costs, 'GBP').map(({ total }) => total.minor),
      project.entries.map(
        (item) => addedSince(project.asOf(item.date), item, wordsOf('en')).costs.value.minor,
      ),
      views.map(({ costsByCategory }) => costsByCategory.total.value.minor),
      views.flatMap(({ costsByPhase }) =>
        costsByPhase.groups.map(({ figure }) => figure.value.minor),
      ),
    ];
    for (const numbers of series)
      for (const one of numbers)
        for (const other of [0, ...numbers]) expect(secret).not.toContain(Math.abs(one - other));
  });

  test('leave nothing of their rows in the book', () => {
    const { now, ...book } = project;
    const all = JSON.stringify([book, now.costs, now.costsByCategory, now.costsByPhase]);
    for (const trace of ['Thing c-2', 'uncle', '1303.07', '130307', '70211', '5099'])
      expect(all).not.toContain(trace);
    expect(all).toContain('Thing c-1');
  });

  test('are in every category a total of their own, in the currency of the project', () => {
    const two = projectOf({
      lists: {
        rates: [
          { id: 'x-1', date: '2025-03-01', from: 'EUR', to: 'GBP', rate: '0.5', source: 'a bank' },
        ],
        costs: [
          cost('c-1', '2025-03-01', '10.00 EUR', { withhold: ['amount'] }),
          cost('c-2', '2025-03-01', '2.00', { withhold: ['amount'] }),
          cost('c-3', '2025-03-01', '4.00', { withhold: ['amount'], category: 'fee' }),
        ],
      },
    });
    expect(two.costs.map(({ id, counted }) => [id, counted])).toEqual([
      ['withheld-part', { minor: 700, currency: 'GBP' }],
      ['withheld-fee', { minor: 400, currency: 'GBP' }],
    ]);
  });

  test('of gifts that do not count are in no total', () => {
    const gift = projectOf({
      lists: { costs: [cost('c-1', '2025-03-01', '9.00', { ...hidden, kind: 'gift' })] },
    });
    expect(gift.costs).toEqual([]);
  });
});

describe('a withheld amount that was corrected', () => {
  const corrected = (withholdOld: Written, withholdNew: Written) =>
    projectOf({
      lists: {
        costs: [
          cost('c-1', '2025-03-01', '10.00', withholdOld),
          cost('c-2', '2025-03-01', '13.00', {
            ...withholdNew,
            ...{ corrects: 'c-1', recorded: '2025-03-05', because: 'Misread' },
          }),
        ],
      },
    });
  const withhold = { withhold: ['amount'] };

  test('counts once, as it is now', () => {
    const both = corrected(withhold, withhold);
    expect(both.now.costsByCategory.total.value.minor).toBe(1300);
  });

  test.each([
    [withhold, withhold],
    [{}, withhold],
    [withhold, {}],
  ])('has an effect that is not told', (old, now) => {
    const made = corrected(old, now);
    expect(made.corrections.map((correction) => effectOf(made, correction))).toEqual([
      { withheld: true },
    ]);
  });

  test('has no line where it is withheld, and one where it is not', () => {
    const half = corrected(withhold, {});
    expect(rowLine(half, 'c-1', 'en-GB')).toBeUndefined();
    expect(rowLine(half, 'c-2', 'en-GB')).toBe('£13.00, Thing c-2');
  });
});

describe('a row that withholds words', () => {
  const quiet = projectOf({
    project: { people: [{ id: 'ada', name: 'Ada Venn' }, { id: 'helper' }] },
    lists: {
      hours: [
        {
          ...{ id: 'h-1', date: '2025-03-01', hours: '2:00', phase: 'strip', work: 'cleaning' },
          ...{ who: 'ada', what: 'With the neighbour', withhold: ['who', 'what'] },
        },
      ],
      searches: [
        {
          ...{ id: 's-1', date: '2025-03-01', part: 'gib', result: 'none' },
          ...{ price: '44.44', note: 'Rang a friend', withhold: ['price', 'note'] },
        },
      ],
      specs: [
        { id: 'play', name: 'Play', about: 'Play.', quantity: 'length', unit: 'mm', system: 'ram' },
      ],
      instruments: [{ id: 'gauge', name: 'Gauge', quantity: 'length' }],
      readings: [
        {
          ...{ id: 'r-1', date: '2025-03-01', spec: 'play', state: 'after', values: '0.2' },
          ...{ unit: 'mm', instrument: 'gauge', by: 'ada', conditions: 'In the kitchen' },
          ...{ note: 'Dropped it once', withhold: ['by', 'conditions', 'note'] },
        },
      ],
    },
  });

  test('counts all the same', () => {
    expect(quiet.now.hoursByPhase.total.value).toBe(120);
    expect(quiet.now.spec('play')?.latest?.value).toBe(0.2);
  });

  test('says so in place of them', () => {
    expect(quiet.hours.map(({ who, what }) => [who, what])).toEqual([['withheld', 'withheld']]);
    expect(quiet.now.hoursByPerson.groups.map(({ name }) => toldIn(name))).toEqual(['withheld']);
  });

  test('has none of them in the book', () => {
    const rows = JSON.stringify([quiet.hours, quiet.searches, quiet.readings, quiet.now.specs]);
    for (const word of ['ada', 'neighbour', '44.44', 'friend', 'kitchen', 'Dropped'])
      expect(rows).not.toContain(word);
  });
});

test("what a row says of itself is the builder's, but for the words that stand in its place", () => {
  const told = (language: string) =>
    project.costs
      .map((row) => toldOf(row, wordsOf(language)))
      .filter((text) => !/^Thing/.test(text));
  expect(told('en')).toEqual(['3 rows whose amounts are withheld, together']);
  expect(told('de')).toEqual(['3 Zeilen mit zurückgehaltenen Beträgen, zusammen']);
  const hiddenWhat = { what: 'withheld', withhold: ['what'] };
  expect(toldOf(hiddenWhat, wordsOf('de'))).toBe('zurückgehalten');
  expect(toldOf({ what: 'withheld' }, wordsOf('de'))).toBe('withheld');
});
