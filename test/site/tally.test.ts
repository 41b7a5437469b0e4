import { describe, expect, inject, test } from 'vitest';
import { addedSince } from '../../src/book/added.ts';
import { showMoney } from '../../src/money/money.ts';
import { showDuration } from '../../src/time/duration.ts';
import { wordsOf } from '../../src/words/words.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, type Element, select, textOf } from './pages.ts';

const site = inject('site');
const { book, page } = await openBuiltDemo();
const entries = book.projects.flatMap((project) =>
  project.entries.map((entry) => ({ project, entry, path: `${project.id}/log/${entry.slug}/` })),
);

/** The number in a cell of the tally, and where it leads when its rows stand on another page. */
function read(cell: Element): { text: string; href: string | undefined; rows: number | undefined } {
  const [summary] = select(cell, 'summary');
  const [link] = summary ? [] : select(cell, 'a.working');
  return {
    text: textOf(summary ?? cell),
    href: link && attribute(link, 'href'),
    rows: summary && select(cell, 'li').length,
  };
}

const cellsOf = (path: string) =>
  select(page(path).root, 'section.tally')
    .flatMap((tally) => select(tally, 'td.number'))
    .map(read);

/** What the row at an address has counted up to: its running total, or its place in a numbered list. */
function runningAt(href: string): string {
  const url = new URL(href, site.address);
  const [row] = select(page(url.pathname).root, `#${url.hash.slice(1)}`);
  if (row?.tagName === 'tr') return textOf(select(row, 'td').at(-1) ?? row);
  const list = row?.parentNode;
  return row && list ? String(select(list, 'li').indexOf(row) + 1) : 'no such row';
}

describe('the tally of every entry', () => {
  test('is there, once', () => {
    const counts = entries.map(({ path }) => select(page(path).root, 'section.tally').length);
    expect(counts).toEqual(entries.map(() => 1));
  });

  test('shows what the book says on the day of the entry', () => {
    for (const { project, entry, path } of entries) {
      const view = project.asOf(entry.date);
      const added = addedSince(view, entry, wordsOf('en'));
      expect(cellsOf(path).map(({ text }) => text)).toEqual([
        `${showDuration(added.hours.value)} h`,
        `${showDuration(view.hoursByPhase.total.value)} h`,
        showMoney(added.costs.value, 'en-GB'),
        showMoney(view.costsByCategory.total.value, 'en-GB'),
        String(added.fitted.value),
        String(added.allFitted.value),
        String(added.readings.value),
        String(added.allReadings.value),
      ]);
    }
  });

  test('opens its counts to as many rows', () => {
    const counts = entries.flatMap(({ path }) =>
      cellsOf(path)
        .slice(4)
        .filter(({ rows }) => rows !== undefined),
    );
    expect(counts.length).toBeGreaterThan(20);
    expect(counts.map(({ text }) => text)).toEqual(counts.map(({ rows }) => String(rows)));
  });

  test('links each running total to the row where the ledger page has run up to that number', () => {
    const links = entries.flatMap(({ path }) =>
      cellsOf(path).flatMap(({ text, href }, index) =>
        index % 2 === 1 && href ? [{ text, href }] : [],
      ),
    );
    expect(links.length).toBeGreaterThan(60);
    expect(links.map(({ href }) => runningAt(href).replace(/ h$/, ''))).toEqual(
      links.map(({ text }) => text.replace(/ h$/, '')),
    );
  });
});
