import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Breakdown } from '../../src/book/figure.ts';
import { sumCosts } from '../../src/cost/costs.ts';
import { sumHours } from '../../src/hours/hours.ts';
import { roundTo } from '../../src/measure/show.ts';
import { decimalsFor } from '../../src/measure/uncertainty.ts';
import { judge } from '../../src/measure/verdict.ts';
import { currencyCodes } from '../../src/money/currency.ts';
import { showMoney } from '../../src/money/money.ts';
import { kindNames } from '../../src/units/kinds.ts';
import { showNumber } from '../../src/units/quantity.ts';
import { convertInterval, convertUnit, isTurned, unitsOf } from '../../src/units/unit.ts';
import { projectOf } from '../book/project-of.ts';
import { figuresOf } from '../measure/spec-read.ts';
import { writtenRows } from './written-rows.ts';

/** Two units of one quantity. */
const pair = fc.constantFrom(
  ...kindNames.flatMap((kind) =>
    unitsOf(kind).flatMap((from) => unitsOf(kind).map((to) => [from, to] as const)),
  ),
);
/** A number of thousandths, so that sums of two and bounds do meet. */
const thousandths = fc.integer({ min: 1, max: 2_000_000 }).map((count) => count / 1000);

describe('units', () => {
  test('a value turned into another unit and back is what it was', () => {
    fc.assert(
      fc.property(pair, thousandths, ([from, to], value) => {
        const back = convertUnit(convertUnit(value, from, to), to, from);
        // The zero of a temperature scale lies 273 K off: there the digits below that are lost.
        expect(Math.abs(back - value)).toBeLessThan(1e-12 * Math.max(value, 1000));
      }),
    );
  });

  test('another unit never changes a verdict, at the very bound neither', () => {
    const judged = fc.record({
      units: pair.filter(([from, to]) => !isTurned(from, to)),
      value: thousandths,
      U: thousandths,
      lower: fc.option(thousandths, { nil: undefined }),
      width: fc.option(thousandths, { nil: undefined }),
      touches: fc.boolean(),
    });
    fc.assert(
      fc.property(judged, ({ units: [from, to], value, U, lower, width, touches }) => {
        const low = touches && lower !== undefined ? value - U : lower;
        const limits = { lower: low, upper: width && (low ?? 0) + width };
        const turn = (at?: number) => (at === undefined ? at : convertUnit(at, from, to));
        const turned = judge(
          convertUnit(value, from, to),
          convertInterval(U, convertUnit(value, from, to), from, to),
          { lower: turn(limits.lower), upper: turn(limits.upper) },
        );
        expect(turned).toBe(judge(value, U, limits));
      }),
    );
  });

  test('a spec shown in another unit keeps its verdict and whether it changed', () => {
    const kilograms = fc.integer({ min: 1, max: 9999 }).map((count) => `${count / 10} kg`);
    const values = fc.array(fc.integer({ min: 1, max: 9999 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(kilograms, kilograms, values, values, (max, error, before, after) => {
        const [inKilograms, ...others] = ['kg', 'lb', 'g', 't'].map((unit) => {
          const { verdict, change } = figuresOf({
            spec: { unit, max },
            instrument: { 'stated-error': error },
            readings: [
              { date: '2025-03-01', state: 'before', values: before.join(' '), unit: 'kg' },
              { date: '2025-03-02', state: 'after', values: after.join(' '), unit: 'kg' },
            ],
          });
          return [verdict, change?.changed];
        });
        for (const other of others) expect(other).toEqual(inKilograms);
      }),
    );
  });
});

describe('sums', () => {
  test('do not depend on the order of the rows', () => {
    fc.assert(
      fc.property(writtenRows, fc.infiniteStream(fc.nat()), (rows, order) => {
        const { hours, costs, currency } = projectOf({ lists: rows });
        const shuffled = <Row>(list: readonly Row[]) =>
          list
            .map((row) => ({ row, place: order.next().value ?? 0 }))
            .sort((a, b) => a.place - b.place)
            .map(({ row }) => row);
        expect(sumHours(shuffled(hours)).value).toBe(sumHours(hours).value);
        expect(sumCosts(shuffled(costs), currency).value).toEqual(sumCosts(costs, currency).value);
      }),
    );
  });

  test('of the groups of every breakdown are its total, row by row', () => {
    fc.assert(
      fc.property(writtenRows, fc.constantFrom('in', 'out'), (rows, tools) => {
        const { now } = projectOf({ lists: rows, project: { rules: { tools } } });
        const { hoursByPhase, hoursByWork, hoursByPerson } = now;
        for (const breakdown of [hoursByPhase, hoursByWork, hoursByPerson])
          addsUp(breakdown, (minutes) => minutes);
        const { costsByCategory, costsByPhase, costsBySource } = now;
        for (const breakdown of [costsByCategory, costsByPhase, costsBySource])
          addsUp(breakdown, ({ minor }) => minor);
      }),
    );
  });
});

function addsUp<Value>(
  { groups, total }: Breakdown<Value>,
  sizeOf: (value: Value) => number,
): void {
  const sum = groups.reduce((all, { figure }) => all + sizeOf(figure.value), 0);
  expect(sum).toBe(sizeOf(total.value));
  const ids = groups.flatMap(({ figure }) => figure.rows.map(({ id }) => id)).sort();
  expect(ids).toEqual(total.rows.map(({ id }) => id).sort());
}

describe('what is shown', () => {
  const money = fc.record({
    minor: fc.nat({ max: 999_999_999_999 }),
    currency: fc.constantFrom(...currencyCodes),
  });

  test('an amount for readers has the digits of the amount, and a minus sign only for a credit', () => {
    fc.assert(
      fc.property(money, fc.constantFrom('en-GB', 'de', 'fr', 'sv'), (amount, language) => {
        const digits = showMoney(amount, language).replace(/\D/g, '');
        expect(Number(digits)).toBe(amount.minor);
        const credit = showMoney({ ...amount, minor: -1 - amount.minor }, language);
        expect(credit).toContain('−');
      }),
    );
  });

  test('an uncertainty has two significant digits', () => {
    const size = fc.double({ min: 1e-7, max: 1e7, noNaN: true });
    fc.assert(
      fc.property(size, (U) => {
        const decimals = decimalsFor(U);
        const shown = showNumber(roundTo(U, decimals), decimals, 'en-GB').replace(/\D/g, '');
        const digits = shown.replace(/^0+/, '');
        expect(decimals < 0 ? digits.slice(0, decimals) : digits).toMatch(/^\d{2}$/);
      }),
    );
  });
});
