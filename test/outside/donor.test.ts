import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { donorAccount } from '../../src/cost/donor.ts';
import { partCosts } from '../../src/cost/part-costs.ts';
import { cell, centsOf, contentDir, listIn, minutesOf, type Row, rowsOf } from './raw-ledger.ts';

const book = await openBook(contentDir, { now: new Date('2026-12-31T12:00:00Z') });
const view = book.project('lapwing')?.now;
const source = view?.project.sources.find(({ kind }) => kind === 'donor');
if (view === undefined || source === undefined) throw new Error('the demo has no donor bus');

const account = donorAccount(view, source);
const costs = rowsOf('lapwing', 'costs').filter((row) => cell(row, 'source') === 'donor');
const parts = rowsOf('lapwing', 'parts').filter((row) => cell(row, 'source') === 'donor');
const pence = (row: Row) => centsOf(row, 'GBP', []).toNumber();
const sum = (rows: readonly Row[]) => rows.reduce((total, row) => total + pence(row), 0);
const of = (name: string, ...texts: string[]) =>
  costs.filter((row) => texts.includes(cell(row, name)));
const written = (row: Row, name: string) => new Decimal(cell(row, name)).times(100);

/** Rows that are the cost of a part after it came off: the blasting of the axle, oak for the seat. */
const ofParts = of('category', 'service', 'part', 'material', 'consumable').filter(
  (row) => listIn(row, 'parts').length > 0 && cell(row, 'kind') === '',
);
const ofBus = costs.filter((row) => !ofParts.includes(row));

/** Parts that bear: still here, worth something, and not for sale. */
const gone = ['sold', 'scrapped', 'for-sale'];
const bearing = parts.filter(
  (row) => cell(row, 'value') !== '' && gone.every((step) => cell(row, step) === ''),
);

describe('the donor of the demo, worked a second way from its files', () => {
  test('cost what its rows say, line by line', () => {
    const lines = Object.fromEntries(
      account.lines.groups.map(({ key, figure }) => [key, figure.value.minor]),
    );
    // 900.00 + 210.00 − 160.00 − 85.00 − 86.40 = 778.60
    expect(lines).toEqual({ bought: 90000, carriage: 21000, sold: -24500, scrap: -8640 });
    expect(lines).toEqual({
      bought: sum(of('category', 'vehicle').filter((row) => cell(row, 'kind') === '')),
      carriage: sum(of('category', 'transport')),
      sold: sum(of('kind', 'sale')),
      scrap: sum(of('kind', 'scrap')),
    });
    expect(account.lines.total.value.minor).toBe(sum(ofBus));
    expect(account.lines.total.value.minor).toBe(77860);
  });

  test('was weighed in at sixteen pence a kilogram', () => {
    const [scrap] = of('kind', 'scrap');
    const kilograms = scrap && cell(scrap, 'mass').replace(' kg', '');
    expect(account.scrap?.kilograms).toBe(Number(kilograms));
    expect(account.scrap?.perKilogram.minor).toBe(new Decimal(8640).div(540).toNumber());
  });

  test('took the hours that name it, and has two things left to sell', () => {
    const hours = rowsOf('lapwing', 'hours').filter((row) => cell(row, 'source') === 'donor');
    expect(account.hours.value).toBe(hours.reduce((total, row) => total + minutesOf(row), 0));
    const offered = parts.filter((row) => cell(row, 'asking') !== '' && cell(row, 'sold') === '');
    expect(account.forSale.rows).toHaveLength(offered.length);
    expect(account.forSale.value.minor).toBe(
      Decimal.sum(...offered.map((row) => written(row, 'asking'))).toNumber(),
    );
  });

  test('is shared over its parts by value, each within a penny of its exact part', () => {
    const whole = Decimal.sum(...bearing.map((row) => written(row, 'value')));
    const exact = bearing.map((row) => written(row, 'value').times(77860).div(whole));
    const shares = new Map(account.shares.map(({ part, money }) => [part.id, money.minor]));
    expect([...shares.keys()].sort()).toEqual(bearing.map((row) => cell(row, 'id')).sort());

    // Largest remainder: the pence that are left after cutting go to the largest parts cut off, the first of equals first.
    const left = 77860 - exact.reduce((total, share) => total + share.floor().toNumber(), 0);
    const order = exact
      .map((share, index) => ({ index, cut: share.minus(share.floor()) }))
      .sort((a, b) => b.cut.cmp(a.cut) || a.index - b.index);
    const lucky = new Set(order.slice(0, left).map(({ index }) => index));
    bearing.forEach((row, index) => {
      const share = exact[index]?.floor().toNumber() ?? Number.NaN;
      expect(shares.get(cell(row, 'id'))).toBe(share + (lucky.has(index) ? 1 : 0));
    });
  });

  test('leaves the work on a part with the part', () => {
    const { parts: all } = partCosts(view);
    const axle = all.find(({ id }) => id === 'rear-axle');
    // 778.60 · 180 ⁄ 755 = 185.626…, and 94.00 for blasting.
    expect([axle?.donor?.money.minor, axle?.direct.value.minor, axle?.total.minor]).toEqual([
      18563, 9400, 27963,
    ]);
    expect(sum(ofParts)).toBe(9400 + 5600);
  });
});
