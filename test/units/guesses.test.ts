import { describe, expect, test } from 'vitest';
import { kindNames, quantityKinds, type Unit } from '../../src/units/kinds.ts';
import { guessUnit, isUnit, kindOf, ucumOf, unitsOf } from '../../src/units/unit.ts';

const units: readonly Unit[] = kindNames.flatMap((kind): readonly Unit[] => quantityKinds[kind]);

describe('guessUnit', () => {
  test.each([
    ['Nm', 'N·m'],
    ['um', 'µm'],
    ['μm', 'µm'],
    ['KG', 'kg'],
    ['lbs', 'lb'],
    ['ft-lb', 'lbf·ft'],
    ['cc', 'cm³'],
    ['Ah', 'A·h'],
    ['degC', '°C'],
    ['bhp', 'hp'],
  ])('takes %j for %j', (typed, meant) => {
    expect(guessUnit(typed)).toBe(meant);
  });

  test('stays within the quantity when that is known', () => {
    expect(guessUnit('min', 'angle')).toBe('arcmin');
    expect(guessUnit('Min', 'time')).toBe('min');
    expect(guessUnit('Nm', 'length')).toBeUndefined();
  });

  test('says nothing when no unit is near', () => {
    expect(guessUnit('smoot')).toBeUndefined();
  });
});

test('no misspelling is read as a unit, and none is the symbol of one of its own kind', () => {
  for (const unit of units)
    for (const alias of unit.alias ?? [])
      expect([alias, isUnit(alias) && kindOf(alias) === kindOf(unit.symbol)]).toEqual([
        alias,
        false,
      ]);
});

test('every symbol stands for one unit only', () => {
  const symbols = units.map(({ symbol }) => symbol);
  expect(symbols.filter((symbol, index) => symbols.indexOf(symbol) !== index)).toEqual([]);
});

test('the unit beside another is of its kind', () => {
  for (const { symbol, beside } of units)
    if (beside !== undefined) expect([symbol, kindOf(beside)]).toEqual([symbol, kindOf(symbol)]);
});

test('a unit has a code of UCUM where there is one', () => {
  expect(ucumOf('N·m')).toBe('N.m');
  expect(ucumOf('L/100km')).toBe('L/(100.km)');
  expect(ucumOf('PS')).toBeUndefined();
});

test('units of a kind are listed for the one who must choose', () => {
  expect(unitsOf('temperature')).toEqual(['°C', '°F']);
  expect(kindOf('bar')).toBe('pressure');
  expect(kindOf('furlong')).toBeUndefined();
});
