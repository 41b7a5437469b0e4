import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

const book = await inContentFolder({}, (folder) => openBook(folder, { now: NOON }));
const [press] = book.projects;
const [entry] = press?.entries ?? [];
if (!press || !entry) throw new Error('the sound project has no entry');

describe('addressesOf a site at the root of its host', () => {
  const to = addressesOf('https://shed.example/');

  test('gives every page an address that ends with a slash', () => {
    expect([
      to.home(),
      to.method(),
      to.project(press),
      to.log(press),
      to.entry(press, entry),
    ]).toEqual([
      '/',
      '/method/',
      '/press/',
      '/press/log/',
      '/press/log/2025-04-13-the-ram-slides/',
    ]);
    expect([to.costs(press), to.hours(press), to.parts(press), to.specs(press)]).toEqual([
      '/press/costs/',
      '/press/hours/',
      '/press/parts/',
      '/press/specs/',
    ]);
    expect([to.survey(press), to.choices(press)]).toEqual(['/press/survey/', '/press/choices/']);
    expect(to.choice(press, 'gib')).toBe('/press/choices/#of-gib');
    expect(to.spec(press, 'ram-play')).toBe('/press/specs/ram-play/');
  });

  test('gives the feed the address of a file', () => {
    expect(to.feed()).toBe('/feed.atom');
  });

  test.each([
    ['an hours row', 'h-002', '/press/hours/2025/#h-002'],
    ['a cost row', 'c-001', '/press/costs/2025/#c-001'],
    ['a reading, on the page of its spec', 'r-002', '/press/specs/ram-play/#r-002'],
    ['a part', 'gib', '/press/parts/gib/'],
    ['a search', 's-001', '/press/parts/#s-001'],
  ])('finds the page of %s', (_, id, address) => {
    expect(to.row(press, id)).toBe(address);
  });

  test('finds definitions at their places', () => {
    expect(to.phase(press, 'teardown')).toBe('/press/hours/#phase-teardown');
    expect(to.source(press, 'spare-press')).toBe('/press/sources/#source-spare-press');
    expect(to.instrument(press, 'dial-indicator')).toBe('/press/specs/#instrument-dial-indicator');
  });

  test('puts the host before an address that must stand alone', () => {
    expect(to.absolute(to.costs(press))).toBe('https://shed.example/press/costs/');
  });
});

test('addressesOf a site in a folder of its host puts the folder before everything', () => {
  const to = addressesOf('https://host.example/~ines/shed/');
  expect(to.home()).toBe('/~ines/shed/');
  expect(to.row(press, 'c-001')).toBe('/~ines/shed/press/costs/2025/#c-001');
  expect(to.absolute(to.feed())).toBe('https://host.example/~ines/shed/feed.atom');
});

test('a finding, a candidate and a choice have their rows on the pages about deciding', async () => {
  const files = {
    'press/surveys.yaml': '- id: first\n  name: As found\n  date: 2025-03-01\n',
    'press/ledger/findings.csv': 'id,date,survey,part,found\nf-001,2025-03-01,first,nut,wear\n',
    'press/ledger/candidates.csv':
      'id,date,part,source,availability,risk\nca-01,2025-03-01,nut,press,in-hand,low\n',
    'press/ledger/choices.csv': 'id,date,candidates,because\nch-01,2025-03-02,ca-01,It turns\n',
  };
  const decided = await inContentFolder(files, (folder) => openBook(folder, { now: NOON }));
  const project = decided.project('press');
  if (!project) throw new Error('the project is missing');
  const to = addressesOf('https://shed.example/');
  expect(['f-001', 'ca-01', 'ch-01'].map((id) => to.row(project, id))).toEqual([
    '/press/survey/#f-001',
    '/press/choices/#ca-01',
    '/press/choices/#ch-01',
  ]);
});
