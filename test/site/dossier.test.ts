import { describe, expect, inject, test } from 'vitest';
import { attribute, type Element, readPages, select, textOf } from './pages.ts';

const dossierOf = (site: { folder: string; address: string }, project: string): Element => {
  const page = readPages(site).find(({ file }) => file === `${project}/dossier/index.html`);
  const [dossier] = page ? select(page.root, 'div.dossier') : [];
  if (dossier === undefined) throw new Error(`there is no dossier of ${project}`);
  return dossier;
};

const lapwing = dossierOf(inject('site'), 'lapwing');
const ostermoor = dossierOf(inject('site'), 'ostermoor');
const press = dossierOf(inject('correctedSite'), 'press');

const sectionOf = (dossier: Element, id: string) =>
  select(dossier, 'section').find((section) => attribute(section, 'aria-labelledby') === id);

describe('money in a dossier', () => {
  test('is every row where the builder wants that, and the rows add up to the total', () => {
    const money = sectionOf(ostermoor, 'dossier-money');
    const rows = money ? select(money, 'tr').map((row) => select(row, 'td').map(textOf)) : [];
    const counted = rows.filter((cells) => cells.length === 6 && cells[5] !== 'not counted');
    const cents = (text = '') =>
      Math.round(Number(text.replace('−', '-').replace(/[€£,]/g, '')) * 100);
    const sum = counted.reduce((all, cells) => all + cents(cells[4]), 0);
    const [total] = money ? select(money, 'strong').map(textOf) : [];
    expect(counted.length).toBeGreaterThan(30);
    expect(sum).toBe(cents(total));
  });

  test('is sums by group, and no row, where the builder wants that', () => {
    const rows = select(lapwing, 'h3').map(textOf);
    expect(rows).not.toContain('Every row');
    expect(textOf(sectionOf(lapwing, 'dossier-money') ?? lapwing)).toContain('By category');
  });

  test('is nowhere where the builder wants none, corrections of costs and rates among it', () => {
    expect(textOf(sectionOf(press, 'dossier-corrections') ?? press)).toContain('a row about money');
    const amounts = /[£€]|EUR|\b(180|12\.50|11\.50|10\.00|14\.00|0\.[89])\b/;
    expect(textOf(press)).not.toMatch(amounts);
    expect(textOf(lapwing)).toMatch(amounts);
  });
});

describe('the photos of a dossier', () => {
  test('are derived sizes with words for them, and lie in the order of the log', () => {
    const pictures = select(lapwing, 'img');
    expect(pictures.length).toBeGreaterThan(10);
    for (const picture of pictures) {
      expect(attribute(picture, 'src')).toMatch(/^\/photos\/.+\.webp$/);
      expect(attribute(picture, 'alt')).not.toBe('');
    }
  });
});

test('every line of the contents leads to a section with that number and title', () => {
  for (const dossier of [lapwing, ostermoor, press]) {
    const [contents] = select(dossier, 'nav.contents');
    const links = contents ? select(contents, 'a') : [];
    const headings = new Map(select(dossier, 'h2').map((h2) => [attribute(h2, 'id'), textOf(h2)]));
    const led = links.map((link) => headings.get(attribute(link, 'href')?.slice(1) ?? ''));
    expect(led).toEqual(links.map((link, index) => `${index + 1} ${textOf(link)}`));
    expect(links.length).toBeGreaterThan(8);
  }
});
