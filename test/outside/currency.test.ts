import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as dineroCurrencies from 'dinero.js/currencies';
import { expect, test } from 'vitest';
import { currencyCodes, exponentOf } from '../../src/money/currency.ts';

// ISO 4217 list one as published 2024-06-25; the npm package currency-codes ships the XML of the standard's agency.
// Its own `digits` field is no source: it gives 0 for the codes that have no minor unit at all.
const xml = readFileSync(
  createRequire(import.meta.url).resolve('currency-codes/iso-4217-list-one.xml'),
  'utf8',
);
const listOne = new Map(
  [...xml.matchAll(/<Ccy>([A-Z]{3})<\/Ccy>[\s\S]*?<CcyMnrUnts>([^<]+)<\/CcyMnrUnts>/g)].map(
    ([, code = '', units = '']) => [code, units],
  ),
);
const withUnits = [...listOne].filter(([, units]) => units !== 'N.A.');

test('the list that is compared with is the whole of list one', () => {
  expect(xml).toContain('Pblshd="2024-06-25"');
  expect(listOne.size).toBe(179);
  expect(listOne.size - withUnits.length).toBe(13);
});

test('every currency of ISO 4217 has the exponent that the standard gives it', () => {
  const ours = withUnits.map(([code]) => [code, String(exponentOf(code))]);
  expect(ours).toEqual(withUnits);
});

test('codes without minor units, metals and those for testing, are no currency here', () => {
  const without = [...listOne].filter(([, units]) => units === 'N.A.').map(([code]) => code);
  expect(without).toContain('XAU');
  expect(without.filter((code) => exponentOf(code) !== undefined)).toEqual([]);
});

test('beyond list one there are only the two codes that are stated: a newer and a withdrawn one', () => {
  expect(currencyCodes.filter((code) => !listOne.has(code))).toEqual(['HRK', 'XCG']);
  expect([exponentOf('HRK'), exponentOf('XCG')]).toEqual([2, 2]);
});

test('dinero.js has the same exponents for all currencies it counts in tens', () => {
  const theirs = Object.values(dineroCurrencies).filter(({ code, base }) => {
    return (base as number) === 10 && exponentOf(code) !== undefined;
  });
  expect(theirs.length).toBeGreaterThan(150);
  expect(theirs.map(({ code }) => [code, exponentOf(code)])).toEqual(
    theirs.map(({ code, exponent }) => [code, exponent]),
  );
});
