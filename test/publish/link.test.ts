import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { resolveLink } from '../../src/publish/link.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

const book = await inContentFolder({}, (folder) => openBook(folder, { now: NOON }));
const [press] = book.projects;
if (!press) throw new Error('the sound folder has no project');
const leadsTo = (url: string) => resolveLink(url, press, addressesOf('https://shed.example/'));

describe('resolveLink', () => {
  test.each([
    ['spec:ram-play', '/press/specs/ram-play/'],
    ['part:gib', '/press/parts/gib/'],
    ['cost:c-002', '/press/costs/2025/#c-002'],
    ['row:h-001', '/press/hours/2025/#h-001'],
    ['row:r-001', '/press/specs/ram-play/#r-001'],
    ['phase:rebuild', '/press/hours/#phase-rebuild'],
    ['source:press', '/press/sources/#source-press'],
    ['entry:2025-04-13-the-ram-slides', '/press/log/2025-04-13-the-ram-slides/'],
  ])('leads %s to %s', (url, address) => {
    expect(leadsTo(url)).toBe(address);
  });

  test.each([
    'https://registry.example/press/',
    'mailto:ines@shed.example',
    '#a-heading',
    '/press/costs/',
    '../costs/#c-001',
    '#user-content-fn-1',
  ])('leaves %s as it is', (url) => {
    expect(leadsTo(url)).toBe(url);
  });

  test('leads to the log when the entry is not there, as a draft is not', () => {
    expect(leadsTo('entry:2025-05-01-a-draft')).toBe('/press/log/');
  });
});
