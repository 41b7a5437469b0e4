import { describe, expect, test } from 'vitest';
import type { Breakdown } from '../../src/book/figure.ts';
import { yearOf, yearsOf } from '../../src/ledger/by-year.ts';
import { showMoney } from '../../src/money/money.ts';
import type { Day } from '../../src/time/day.ts';
import { isoDuration, showDuration } from '../../src/time/duration.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, type Element, select, textOf } from './pages.ts';

const { book, page } = await openBuiltDemo();
const pounds = (money: Parameters<typeof showMoney>[0]) => showMoney(money, 'en-GB');
const cellsOf = (row: Element | undefined) => (row ? select(row, 'td').map(textOf) : []);
const values = (elements: readonly Element[], name: string) =>
  elements.map((element) => attribute(element, name));

/** Texts of a breakdown's sums on its page against the book's. */
function expectSums<Value>(
  path: string,
  prefix: string,
  sums: Breakdown<Value>,
  show: (value: Value) => string,
): void {
  const shown = sums.groups.map(({ key }) => {
    const [group] = select(page(path).root, `#${prefix}-${key}`);
    return group ? select(group, '.figure').map(textOf)[0] : 'none';
  });
  expect(shown).toEqual(sums.groups.map(({ figure }) => show(figure.value)));
  const opened = sums.groups.map(({ key }) => {
    const [group] = select(page(path).root, `#${prefix}-${key}`);
    return group ? select(group, 'li').length : 0;
  });
  expect(opened).toEqual(sums.groups.map(({ figure }) => figure.rows.length));
}

describe.each(book.projects.map((project) => ({ project, id: project.id })))(
  '$id',
  ({ project, id }) => {
    const view = project.now;
    const rowOnItsPage = (what: 'costs' | 'hours', row: { id: string; date: Day }) =>
      select(page(`${id}/${what}/${yearOf(row.date)}/`).root, `#${row.id}`)[0];

    test('the cost page shows the total of the book, and its last row runs up to it', () => {
      const { root } = page(`${id}/costs/`);
      const total = view.costsByCategory.total.value;
      const [lead] = select(root, '.lead').flatMap((part) => select(part, 'data'));
      expect(lead && [attribute(lead, 'value'), textOf(lead)]).toEqual([
        String(total.minor),
        pounds(total),
      ]);

      const rows = project.costs.map((row) => rowOnItsPage('costs', row));
      const amounts = rows.flatMap((row) => (row ? values(select(row, 'data'), 'value') : 'none'));
      expect(amounts).toEqual(project.costs.map(({ counted }) => String(counted.minor)));
      expect(cellsOf(rows.at(-1)).at(-1)).toBe(pounds(total));
    });

    test.each(['costs', 'hours'] as const)(
      'the %s go on from year to year: each begins where the one before ended, and every row has its old place too',
      (what) => {
        const overview = page(`${id}/${what}/`).root;
        const years = yearsOf(project[what]);
        const ends = years.map((year) => {
          const { root } = page(`${id}/${what}/${year}/`);
          const carried = select(root, '.carried')[0];
          const last = select(root, 'tbody')[0];
          const totals = last ? select(last, 'tr').map((row) => cellsOf(row).at(-1)) : [];
          return {
            begins: carried && cellsOf(carried).at(-1),
            ends: totals.filter((text) => text !== 'not counted').at(-1),
          };
        });
        expect(ends.map(({ begins }) => begins)).toEqual([
          undefined,
          ...ends.slice(0, -1).map((year) => year.ends),
        ]);
        for (const row of project[what]) {
          const [old] = select(overview, `#${row.id}`).flatMap((place) => select(place, 'a'));
          expect(old && attribute(old, 'href')).toBe(
            `/${id}/${what}/${yearOf(row.date)}/#${row.id}`,
          );
        }
      },
    );

    test('the sums by category, phase and source are those of the book, and each opens to all its rows', () => {
      expectSums(`${id}/costs/`, 'category', view.costsByCategory, pounds);
      expectSums(`${id}/costs/`, 'phase', view.costsByPhase, pounds);
      expectSums(`${id}/costs/`, 'source', view.costsBySource, pounds);
    });

    test('the hours page shows the total of the book, and its last row runs up to it', () => {
      const { root } = page(`${id}/hours/`);
      const total = view.hoursByPhase.total.value;
      const [lead] = select(root, '.lead').flatMap((part) => select(part, 'time'));
      expect(lead && [attribute(lead, 'datetime'), textOf(lead)]).toEqual([
        isoDuration(total),
        `${showDuration(total)} h`,
      ]);

      const rows = project.hours.map((row) => rowOnItsPage('hours', row));
      expect(rows.map((row) => cellsOf(row).at(-2))).toEqual(
        project.hours.map(({ hours }) => showDuration(hours)),
      );
      expect(cellsOf(rows.at(-1)).at(-1)).toBe(showDuration(total));
    });

    test('the sums by phase, work and person are those of the book, and each opens to all its rows', () => {
      const hours = (minutes: number) => `${showDuration(minutes)} h`;
      expectSums(`${id}/hours/`, 'by-phase', view.hoursByPhase, hours);
      expectSums(`${id}/hours/`, 'by-work', view.hoursByWork, hours);
      expectSums(`${id}/hours/`, 'by-person', view.hoursByPerson, hours);
    });

    test('the parts page lists every part of the book once, by its system', () => {
      const { root } = page(`${id}/parts/`);
      const listed = select(root, 'section').filter((part) =>
        /^system-/.test(attribute(part, 'aria-labelledby') ?? ''),
      );
      const ids = listed.flatMap((part) =>
        select(part, 'tr').flatMap((row) => attribute(row, 'id') ?? []),
      );
      expect(ids.sort()).toEqual(view.parts.map(({ part }) => part.id).sort());
      expect(textOf(select(root, '.lead')[0] ?? root)).toContain(`${view.parts.length} parts.`);
    });

    test('the front pages show the same totals as the ledger pages', () => {
      for (const path of ['', `${id}/`]) {
        const numbers = select(page(path).root, '.standing').flatMap((part) => [
          ...values(select(part, 'time'), 'datetime'),
          ...values(select(part, 'data'), 'value'),
        ]);
        expect(numbers).toContain(isoDuration(view.hoursByPhase.total.value));
        expect(numbers).toContain(String(view.costsByCategory.total.value.minor));
      }
    });

    test('every spec page leads with the latest value of the book and lists every reading', () => {
      for (const { spec, latest, history } of view.specs) {
        const { root } = page(`${id}/specs/${spec.id}/`);
        const [lead] = select(root, '.standing').flatMap((part) =>
          values(select(part, 'data'), 'value'),
        );
        expect(lead).toBe(latest && String(latest.value));
        const listed = history.filter((item) => select(root, `#${item.id}`).length === 1);
        expect(listed).toHaveLength(history.length);
      }
    });
  },
);
