import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { donorAccounts } from '../../src/cost/donor.ts';
import { partCosts } from '../../src/cost/part-costs.ts';
import { costCategories, costKinds } from '../../src/model/cost-rows.ts';
import { allocate } from '../../src/money/allocate.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { writtenDay } from './written-rows.ts';

const amount = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
const weights = fc
  .array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 12 })
  .filter((all) => all.some((weight) => weight > 0));
const shared = (minor: number, all: readonly number[]) =>
  allocate({ minor, currency: 'GBP' }, all.map(BigInt)).map((money) => money.minor);
const sumOf = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

describe('shares of an amount', () => {
  test('add up to it, and none is a whole unit off its exact part', () => {
    fc.assert(
      fc.property(amount, weights, (minor, all) => {
        const shares = shared(minor, all);
        expect(sumOf(shares)).toBe(minor);
        shares.forEach((share, index) => {
          const exact = (minor * (all[index] ?? 0)) / sumOf(all);
          expect(Math.abs(share - exact)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });

  test('of a credit are those of the payment with the other sign', () => {
    fc.assert(
      fc.property(amount, weights, (minor, all) => {
        expect(shared(-minor, all).map((share) => 0 - share)).toEqual(shared(minor, all));
      }),
    );
  });

  test('do not depend on the scale of the weights, and nothing goes to no weight', () => {
    fc.assert(
      fc.property(amount, weights, fc.integer({ min: 2, max: 99 }), (minor, all, times) => {
        const shares = shared(minor, all);
        expect(
          shared(
            minor,
            all.map((weight) => weight * times),
          ),
        ).toEqual(shares);
        expect(shares.filter((share, index) => all[index] === 0 && share !== 0)).toEqual([]);
      }),
    );
  });
});

const sources = ['base', 'donor', 'donor', 'new'].map((kind, index) => ({
  ...{ id: `s-${index}`, kind, name: `Source ${index}` },
}));
const partIds = ['p-0', 'p-1', 'p-2', 'p-3', 'p-4'];
const pounds = fc.nat({ max: 99_999 }).map((pence) => (pence / 100).toFixed(2));
const source = fc.constantFrom(...sources.map(({ id }) => id));
const step = fc.constantFrom('got', 'fitted', 'sold', 'scrapped', 'for-sale');

const parts = fc
  .tuple(
    ...partIds.map((id) =>
      fc
        .record(
          { source, step, day: writtenDay, value: pounds, 'new-price': pounds },
          { requiredKeys: ['source', 'step', 'day'] },
        )
        .map(({ step: name, day, ...rest }): Written => {
          return { id, name: id, system: 'body', got: '2025-01-01', [name]: day, ...rest };
        }),
    ),
  )
  .map((all): Written[] => all);

const costs = fc
  .array(
    fc.record(
      {
        date: writtenDay,
        amount: pounds,
        category: fc.constantFrom(...costCategories),
        kind: fc.constantFrom(...costKinds),
        source,
        parts: fc.uniqueArray(fc.constantFrom(...partIds), { minLength: 1, maxLength: 3 }),
        share: fc.constantFrom('40 %', '100 %'),
      },
      { requiredKeys: ['date', 'amount', 'category', 'kind'] },
    ),
    { maxLength: 14 },
  )
  .map((rows): Written[] =>
    rows.map((fields, index) => ({ id: `c-${index}`, phase: 'strip', what: 'Paid', ...fields })),
  );

describe('what parts cost', () => {
  const inOrOut = fc.constantFrom('in', 'out');
  const rules = fc.record({ tools: inOrOut, gifts: inOrOut, trades: inOrOut });
  const viewOn = fc
    .record({ costs, parts, rules, day: writtenDay })
    .map(({ rules: given, day, ...lists }) =>
      projectOf({ lists: { sources, ...lists }, project: { rules: given } }).asOf(day as Day),
    );

  test('and what no part bears are together all that was spent, each row once', () => {
    fc.assert(
      fc.property(viewOn, (view) => {
        const { inParts, bearers } = partCosts(view);
        const total = view.costsByCategory.total;
        const ids = bearers.groups.flatMap(({ figure }) => figure.rows.map(({ id }) => id));
        expect(ids.sort()).toEqual(total.rows.map(({ id }) => id).sort());

        const shares = donorAccounts(view).filter((account) => account.shares.length > 0);
        const inShares = new Set(shares.map((account) => `machine-${account.source.id}`));
        const others = bearers.groups.filter(({ key }) => key !== 'parts' && !inShares.has(key));
        const unshared = sumOf(others.map(({ figure }) => figure.value.minor));
        expect(inParts.minor + unshared).toBe(total.value.minor);
      }),
    );
  });

  test('are their own costs and their share of a donor, and a donor is shared whole or not at all', () => {
    fc.assert(
      fc.property(viewOn, (view) => {
        for (const { direct, donor, total, newPrice, saved } of partCosts(view).parts) {
          expect(total.minor).toBe(direct.value.minor + (donor?.money.minor ?? 0));
          expect(sumOf(direct.rows.map(({ counted }) => counted.minor))).toBe(direct.value.minor);
          if (newPrice) expect(saved?.minor).toBe(newPrice.minor - total.minor);
        }
        for (const { shares, lines } of donorAccounts(view))
          if (shares.length > 0)
            expect(sumOf(shares.map(({ money }) => money.minor))).toBe(lines.total.value.minor);
      }),
    );
  });
});
