import { describe, expect, test } from 'vitest';
import type { Project } from '../../src/book/types.ts';
import { chainOf } from '../../src/parts/chain.ts';
import { whereText } from '../../src/parts/part-words.ts';
import { wantedOn } from '../../src/parts/wanted.ts';
import { showShortDay } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const { book, page } = await openBuiltDemo();
const projects = book.projects.map((project) => ({ id: project.id, project }));

const stepsOn = (project: Project, part: string) => {
  const items = select(page(`${project.id}/parts/${part}/`).root, '.chain').flatMap((list) =>
    select(list, 'li'),
  );
  return items.map((item) => select(item, 'time').map((time) => attribute(time, 'datetime'))[0]);
};

describe.each(projects)('in $id', ({ id, project }) => {
  test('every part has a page with all its steps, drawn when they are of more than one day', () => {
    for (const part of project.parts) {
      const chain = chainOf(project.now, part.id);
      const dates = chain?.steps.map(({ date }) => date) ?? [];
      expect(stepsOn(project, part.id)).toEqual(dates);
      const { root } = page(`${id}/parts/${part.id}/`);
      const isDrawn = new Set(dates).size > 1 || chain?.where.at === 'sent out';
      expect([
        part.id,
        select(root, 'svg').some((svg) => attribute(svg, 'class') !== 'qr'),
      ]).toEqual([part.id, isDrawn]);
      expect(select(root, '.where').map(textOf)[0]).toContain(
        chain && whereText(chain.where, wordsOf('en')),
      );
    }
  });

  test('the wanted page lists what is wanted and for sale, with its feed and a way to answer', () => {
    const { root } = page(`${id}/wanted/`);
    const { wanted, offers } = wantedOn(project.now);
    const names = select(root, '.asked').flatMap((list) => select(list, 'a.name').map(textOf));
    expect(names).toEqual([...wanted, ...offers].map(({ item }) => item.part.name));
    expect(select(root, '.contact').map(textOf)).toEqual([
      'Have one, or want one? Write to letters@bench-and-barn.example.',
    ]);
    const feeds = select(root, 'link').filter((link) => attribute(link, 'rel') === 'alternate');
    expect(feeds.map((link) => attribute(link, 'href'))).toContain(`/${id}/wanted.atom`);
  });

  test('the sources page has every part under its source', () => {
    const { root } = page(`${id}/sources/`);
    for (const [source, parts] of project.now.partsBySource) {
      const [section] = select(root, 'section').filter(
        (item) => attribute(item, 'aria-labelledby') === `source-${source}`,
      );
      const links = section ? select(section, 'li').flatMap((item) => select(item, 'a')) : [];
      expect(links.map((link) => attribute(link, 'href'))).toEqual(
        parts.map(({ part }) => `/${id}/parts/${part.id}/`),
      );
    }
  });
});

test('an overdue return is told on the project page and on the parts page', () => {
  for (const path of ['lapwing/', 'lapwing/parts/']) {
    const [late] = select(page(path).root, '.overdue').map(textOf);
    expect(late).toContain(
      "Front passenger's seat sent out for repair, due 22 Sept 2026, 4 days ago",
    );
  }
});

test('an entry shows what was wanted on its own day, not what is wanted today', () => {
  const [entry] =
    book
      .project('lapwing')
      ?.entries.filter(({ components }) => components.some(({ name }) => name === 'Wanted')) ?? [];
  if (entry === undefined) throw new Error('no entry of the demo uses <Wanted />');
  const [list] = select(page(`lapwing/log/${entry.slug}/`).root, 'aside.wanted').map(textOf);
  expect(list).toContain('Wanted: Heater tap');
  expect(list).toContain(`As of ${showShortDay(entry.date, 'en-GB')}`);
  expect(select(page('lapwing/wanted/').root, '#wanted').map(textOf)).toEqual(['Wanted']);
});
