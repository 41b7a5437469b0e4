import { parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import { addressesOf } from '../../src/publish/address.ts';
import { crumbsData } from '../../src/publish/structured/crumbs-data.ts';
import { unitCode } from '../../src/publish/structured/unit-code.ts';
import { writeJsonLd } from '../../src/publish/structured/write-json-ld.ts';
import { quantityKinds, type Unit } from '../../src/units/kinds.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf } from '../book/project-of.ts';
import { select, textOf } from '../site/pages.ts';

describe('writeJsonLd', () => {
  test.each([
    '</script><script>alert(1)</script>',
    '<!-- <script>',
    ']]> & " \\ \u2028 \u2029',
    'Nuts & <bolts>',
  ])('keeps %j inside its element, and means the same', (name) => {
    const json = writeJsonLd({ '@type': 'Thing', name });
    expect(json).not.toMatch(/[<>&\u2028\u2029]/);
    const page = parse(`<!doctype html><script type="application/ld+json">${json}</script><p>a`);
    const scripts = select(page, 'script');
    expect(scripts).toHaveLength(1);
    const [node] = scripts[0]?.childNodes ?? [];
    const text = node && 'value' in node ? node.value : '';
    expect(JSON.parse(text)).toEqual({ '@context': 'https://schema.org', '@type': 'Thing', name });
    expect(select(page, 'p').map(textOf)).toEqual(['a']);
  });
});

// UNECE Recommendation 20, revision 17, annex III: common code and name of each unit.
const RECOMMENDATION_20 = {
  mm: 'MMT',
  cm: 'CMT',
  m: 'MTR',
  µm: '4H',
  in: 'INH',
  thou: '77',
  ft: 'FOT',
  kg: 'KGM',
  lb: 'LBR',
  'kg/m': 'KL',
  N: 'NEW',
  N·m: 'NU',
  bar: 'BAR',
  '°C': 'CEL',
  '%': 'P1',
  Ω: 'OHM',
  Hz: 'HTZ',
  rpm: 'RPM',
  mA: '4K',
  kW: 'KWT',
};

describe('unitCode', () => {
  test.each(Object.entries(RECOMMENDATION_20))('of %s is %s', (unit, code) => {
    expect(unitCode(unit)).toBe(code);
  });

  test('is the UCUM code with a prefix where UN/CEFACT has none that we know', () => {
    expect(unitCode('µm/m')).toBe('UCUM:um/m');
  });

  test('is three characters at most or has a prefix, for every unit that UCUM knows', () => {
    for (const unit of Object.values(quantityKinds).flat() as Unit[])
      if (unit.ucum) expect(unitCode(unit.symbol)).toMatch(/^([A-Z0-9]{2,3}|UCUM:\S+)$/);
  });
});

describe('crumbsData', () => {
  const to = addressesOf('https://shed.example/log/');
  const words = wordsOf('en');
  const site = { title: 'A shed' } as Parameters<typeof crumbsData>[1];
  const project = projectOf({});
  const way = (where: Omit<Parameters<typeof crumbsData>[0], 'project'>) => {
    const items = crumbsData({ project, ...where }, site, { to, words })?.['itemListElement'];
    return (items as { name: string; item: string }[] | undefined)?.map(({ name, item }) => [
      name,
      item,
    ]);
  };
  const home = 'https://shed.example/log/';

  test('leads from the site through the project and its part to the page', () => {
    const path = '/log/drill-press/specs/play/';
    expect(way({ title: 'Play', path, section: 'specs' })).toEqual([
      ['A shed', home],
      [project.info.name, `${home}drill-press/`],
      ['Specs', `${home}drill-press/specs/`],
      ['Play', `${home}drill-press/specs/play/`],
    ]);
  });

  test('names a page once that heads its part', () => {
    expect(way({ title: 'Costs', path: '/log/drill-press/costs/', section: 'costs' })).toHaveLength(
      3,
    );
    expect(way({ title: 'x', path: '/log/drill-press/', section: 'project' })).toHaveLength(2);
  });

  test('is none for the first page of the site', () => {
    expect(
      crumbsData({ title: 'A shed', path: '/log/', project: undefined, section: undefined }, site, {
        to,
        words,
      }),
    ).toBeUndefined();
  });
});
