import { expect, it } from 'vitest';
import { cssString, runningHeads } from '../../src/dossier/running-heads.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { projectOf } from '../book/project-of.ts';

it('a name with quotes, backslashes and line ends stays one string of CSS', () => {
  expect(cssString('The "old" press \\ one\ntwo </style>')).toBe(
    '"The \\22 old\\22  press \\5c  one\\a two \\3c /style>"',
  );
});

it.each([
  ['en-GB', '"Page " counter(page) " of " counter(pages)', ': dossier"', '"As of '],
  ['de-DE', '"Seite " counter(page) " von " counter(pages)', ': Dossier"', '"Stand '],
])('the heads and feet of a page are in its language: %s', (language, page, head, day) => {
  const sheet = runningHeads(projectOf({}), addressesOf('https://bench.example/'), language);
  for (const text of [page, head, day]) expect(sheet).toContain(text);
});
