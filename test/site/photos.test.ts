import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { photoList } from '../../src/publish/photo-list.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const site = inject('site');
const { book, page } = await openBuiltDemo();
const photos = book.projects.flatMap((project) =>
  photoList(project).map((photo, index, all) => ({ project, photo, index, all })),
);
const pageOf = (project: string, name: string) => page(`${project}/photos/${name}/`);

describe('the page of every photo', () => {
  test('shows it with the words for those who do not see it, its size, and a way to the whole picture', () => {
    for (const { project, photo } of photos) {
      const [picture] = select(pageOf(project.id, photo.name).root, 'img');
      if (picture === undefined) throw new Error(`${photo.file} is not shown`);
      expect(attribute(picture, 'alt')).toBe(photo.alt);
      expect(photo.alt).not.toBe('');
      expect([attribute(picture, 'width'), attribute(picture, 'height')]).not.toContain(undefined);
    }
  });

  test('says the SHA-256 of the original, as another program works it out of the file', () => {
    for (const { project, photo } of photos) {
      const original = readFileSync(join(site.content, project.id, 'photos', photo.file));
      const hash = createHash('sha256').update(original).digest('hex');
      const [shown] = select(pageOf(project.id, photo.name).root, 'code.hash');
      expect(shown && textOf(shown)).toBe(hash);
    }
  });

  test('leads to the one before and the one after', () => {
    for (const { project, photo, index, all } of photos) {
      const links = select(pageOf(project.id, photo.name).root, 'a');
      const to = (rel: string) =>
        links
          .filter((link) => attribute(link, 'rel') === rel)
          .map((link) => attribute(link, 'href'));
      const address = (name: string | undefined) =>
        name === undefined
          ? []
          : [`${new URL(site.address).pathname}${project.id}/photos/${name}/`];
      expect(to('prev')).toEqual(address(all[index - 1]?.name));
      expect(to('next')).toEqual(address(all[index + 1]?.name));
    }
  });

  test('names the row that is bound to it by a mark', () => {
    const { root } = pageOf('ostermoor', 'blue-points');
    expect(textOf(root)).toContain('f-01, marked on');
  });
});

test('the gallery shows every photo by phase, and none of them a second time there', () => {
  for (const project of book.projects) {
    const { root } = page(`${project.id}/photos/`);
    const [byPhase] = select(root, 'section').filter(
      (section) => attribute(section, 'aria-labelledby') === 'phase',
    );
    if (byPhase === undefined) throw new Error('no section by phase');
    const names = select(byPhase, 'li').map((item) =>
      attribute(select(item, 'a')[0] ?? item, 'href'),
    );
    expect(names).toHaveLength(photoList(project).length);
    expect(new Set(names).size).toBe(names.length);
  }
});

test('only the first picture of a page is fetched before it is scrolled to', () => {
  const { root } = page('lapwing/photos/');
  const eager = select(root, 'img').filter((picture) => attribute(picture, 'loading') !== 'lazy');
  expect(eager).toHaveLength(1);
});

describe('a pair', () => {
  const pairs = book.projects.flatMap(({ id, entries }) =>
    entries.flatMap(({ slug }) => select(page(`${id}/log/${slug}/`).root, 'figure.pair')),
  );

  test('has two pictures of one size, cut from their originals, and says how many days lie between', () => {
    expect(pairs).toHaveLength(2);
    for (const pair of pairs) {
      const pictures = select(pair, 'img');
      expect(pictures.map((picture) => attribute(picture, 'width'))).toEqual([
        attribute(pictures[0] ?? pair, 'width'),
        attribute(pictures[0] ?? pair, 'width'),
      ]);
    }
    // From 26 July 2025 to 24 May 2026: 5 + 31 + 30 + 31 + 30 + 31 + 31 + 28 + 31 + 30 + 24 days.
    expect(pairs.map((pair) => textOf(pair)).join()).toContain('302 days later');
  });
});

test('callouts are drawn over a photo and listed below it, as many of one as of the other', () => {
  const { root } = page('lapwing/photos/three-quarter-open/');
  const [drawn] = select(root, 'svg.callouts');
  const [list] = select(root, '.callout-list');
  if (!drawn || !list) throw new Error('no callouts');
  expect(select(drawn, 'circle.open')).toHaveLength(4);
  expect(select(list, 'ol').flatMap((one) => select(one, 'li'))).toHaveLength(4);
  const value = select(list, 'span.value').map(textOf);
  expect(value).toHaveLength(1);
  expect(select(drawn, 'text').map(textOf)).toContain(value[0]);
});
