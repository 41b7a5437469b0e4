import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { openBuiltDemo } from './built-book.ts';
import { attribute, type Element, type Page, select, textOf } from './pages.ts';

const site = inject('site');
const { book, page } = await openBuiltDemo();
const entries = book.projects.flatMap((project) =>
  project.entries.map((entry) => ({
    entry,
    page: page(`${project.id}/log/${entry.slug}/`),
    source: readFileSync(join(site.content, entry.file), 'utf8'),
  })),
);

/** What each component leaves on a page. */
const TRACES: Readonly<Record<string, (page: Page) => Element[]>> = {
  Tally: ({ root }) => select(root, 'section.tally'),
  Spec: ({ root }) => select(root, 'a.spec'),
  Change: ({ root }) => select(root, 'figure.change'),
  Working: ({ root }) => select(root, 'details.working-out'),
  Timeline: ({ root }) => select(root, '.timeline'),
  Budget: ({ root }) => select(root, 'section.budget'),
  Forecast: ({ root }) => select(root, 'section.forecast'),
  Sources: ({ root }) => select(root, 'figure.sources'),
  Wanted: ({ root }) => select(root, 'aside.wanted'),
  Costs: ({ root }) => labelled(root, 'Cost rows'),
  Parts: ({ root }) => labelled(root, 'Parts'),
  Donor: ({ root }) => select(root, 'section.donor'),
  Survey: ({ root }) => select(root, '.survey-shown'),
  Choice: ({ root }) => select(root, '.choice'),
  Hazard: ({ root }) => select(root, 'aside.hazard'),
  Photo: ({ root }) => select(root, 'figure.photo'),
  PhotoPair: ({ root }) => select(root, 'figure.pair'),
  AtTime: ({ root }) => select(root, 'a.moment'),
};

const labelled = (root: Page['root'], label: string) =>
  select(root, '.scroll').filter((frame) => attribute(frame, 'aria-label') === label);

const literal = (entry: (typeof entries)[number]['entry'], name: string, prop: string) =>
  entry.components
    .filter((component) => component.name === name)
    .map(({ props }) => String(props.find((item) => item.name === prop)?.literal));

describe.each(Object.keys(TRACES))('<%s />', (name) => {
  test('shows on every page as often as its entry uses it, and is used in the demo', () => {
    const used = entries.map(({ source }) => source.split(new RegExp(`<${name}[ />]`)).length - 1);
    expect(entries.map((item) => TRACES[name]?.(item.page).length)).toEqual(used);
    expect(Math.max(...used)).toBeGreaterThan(0);
  });

  test('leaves nothing empty', () => {
    const traces = entries.flatMap((item) => TRACES[name]?.(item.page) ?? []);
    const empty = traces.filter((trace) => {
      const rows = select(trace, 'tr').length;
      return textOf(trace) === '' || (select(trace, 'table').length > 0 && rows < 2);
    });
    expect(empty.map(textOf)).toEqual([]);
  });
});

test('a photo keeps the words that its entry gives for those who do not see it', () => {
  for (const { entry, page: shown } of entries) {
    const altsIn = (figure: string) =>
      select(shown.root, figure)
        .flatMap((one) => select(one, 'img'))
        .map((picture) => attribute(picture, 'alt'));
    expect(altsIn('figure.photo')).toEqual(literal(entry, 'Photo', 'alt'));
    const [before, after] = ['before-alt', 'after-alt'].map((alt) =>
      literal(entry, 'PhotoPair', alt),
    );
    expect(altsIn('figure.pair')).toEqual(
      (before ?? []).flatMap((alt, index) => [alt, after?.[index]]),
    );
  }
});

test('a hazard note stands before the text it warns of, with signal word, harm and how to avoid it', () => {
  for (const { entry, page: shown } of entries) {
    const notes = select(shown.root, 'aside.hazard');
    expect(notes.map((note) => select(note, 'p').map(textOf))).toEqual(
      literal(entry, 'Hazard', 'signal').map((signal, index) => [
        signal,
        ...['hazard', 'harm', 'avoid'].map((prop) => literal(entry, 'Hazard', prop)[index]),
      ]),
    );
  }
});

test('every before-and-after is drawn, and has the same numbers in a table', () => {
  for (const change of entries.flatMap((item) => TRACES.Change?.(item.page) ?? [])) {
    const rows = select(change, 'tr').slice(1);
    expect(select(change, '.change-drawing')).toHaveLength(rows.length);
    expect(rows.map((row) => select(row, 'data').length)).toEqual(rows.map(() => 2));
  }
});
