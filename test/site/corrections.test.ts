import { describe, expect, inject, test } from 'vitest';
import { deadLinks } from './dead-links.ts';
import { attribute, readPages, select, textOf } from './pages.ts';

const site = inject('correctedSite');
const pages = new Map(readPages(site).map((page) => [page.file, page.root]));

/** Table rows of a page under `press/`, each as the texts of its cells. */
function rowsOf(page: string) {
  const root = pages.get(`press/${page}/index.html`);
  if (root === undefined) throw new Error(`there is no page ${page}`);
  return select(root, 'tr').map((row) => ({
    id: attribute(row, 'id'),
    struck: select(row, 's').map(textOf),
    text: textOf(row),
    running: textOf(select(row, 'td').at(-1) ?? row),
  }));
}

describe('the page of corrections', () => {
  const rows = rowsOf('corrections')
    .slice(1)
    .filter(({ id }) => id !== undefined && !/-of-/.test(id));

  test('lists each with an address, what was, what is, why, and its effect', () => {
    expect(rows.map(({ id }) => id)).toEqual(['c-003', 'r-003', 's-002', 'x-002', 'w-001']);
    const [cost, , , rate, withdrawal] = rows;
    expect(cost?.struck).toEqual(['£12.50, A gib from the spare press']);
    expect(cost?.text).toContain('£11.50, A gib from the spare press');
    expect(cost?.text).toContain('Misread the receipt');
    expect([cost, rate, withdrawal].map((row) => row?.running)).toEqual([
      '−£1.00',
      '£1.00',
      '−2:30 h',
    ]);
    expect(withdrawal?.text).toContain('nothing: it was withdrawn');
  });
});

test('the totals of an entry are followed from the ledger of today, where rows were corrected later', () => {
  const rows = rowsOf('corrections').filter(({ id }) => id && /-of-/.test(id));
  expect(rows.map(({ id, running }) => [id, running])).toEqual([
    ['costs-of-2025-04-13-the-ram-slides', '£200.50'],
    ['hours-of-2025-04-13-the-ram-slides', '7:30 h'],
  ]);
});

describe('a row that no longer counts', () => {
  const costs = rowsOf('costs/2025').filter(({ text }) => /^c-/.test(text));

  test('stays where it stood, struck, with the reason, and the running total passes over it', () => {
    const [, old, , atOldRate] = costs;
    expect(old?.struck).toEqual(['A gib from the spare press']);
    expect(old?.text).toContain('replaced by c-003 on 20 Apr 2025: Misread the receipt');
    expect(atOldRate?.text).toContain('its rate replaced by x-002 on 22 Apr 2025');
    expect(costs.map(({ running }) => running)).toEqual([
      ...['£180.00', 'not counted', '£191.50', 'not counted', '£200.50'],
    ]);
  });

  test('has one address, also where it is two rows at two rates', () => {
    expect(costs.map(({ id }) => id)).toEqual(['c-001', 'c-002', 'c-003', undefined, 'c-004']);
  });

  test('is struck among hours, readings and searches too', () => {
    const struck = (page: string, id: string) => {
      const row = rowsOf(page).find((item) => item.id === id);
      return [row?.struck.length !== 0, row?.text.includes('by')];
    };
    expect(struck('hours/2025', 'h-001')).toEqual([true, true]);
    expect(struck('specs/ram-play', 'r-001')).toEqual([true, true]);
    expect(struck('parts', 's-001')).toEqual([true, true]);
  });
});

test('a site with corrections has no link that leads nowhere', () => {
  expect(deadLinks(site)).toEqual([]);
});
