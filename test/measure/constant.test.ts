import { describe, expect, test } from 'vitest';
import { readConstant } from '../../src/measure/constant.ts';

describe('readConstant reads', () => {
  test('a value with its unit, which counts as exact', () => {
    expect(readConstant('600 mm')).toEqual({ value: 600, unit: 'mm', components: [] });
    expect(readConstant('-0.5 °')).toMatchObject({ value: -0.5, unit: '°' });
  });

  test.each(['600 ± 3 mm', '600±3 mm', '600 ±3mm', '600 +/- 3 mm'])(
    'what it may be off by, as a half-width with nothing known of the shape (GUM 4.3.7): %s',
    (text) => {
      const constant = readConstant(text);
      if ('wrong' in constant) throw new Error(constant.wrong);
      expect([constant.value, constant.unit]).toEqual([600, 'mm']);
      expect(constant.components).toEqual([
        {
          key: 'stated',
          group: 'stated',
          name: 'stated ±',
          u: 3 / Math.sqrt(3),
          nu: Number.POSITIVE_INFINITY,
          shape: 'rectangular',
          how: 'a/√3 = 3/√3',
        },
      ]);
    },
  );

  test('± 0 as exact', () => {
    expect(readConstant('600 ± 0 mm')).toMatchObject({ value: 600, components: [] });
  });

  test('a sheet gauge with its material, in inches', () => {
    expect(readConstant('18 ga steel')).toEqual({ value: 2 / 41.82, unit: 'in', components: [] });
  });
});

describe('readConstant refuses', () => {
  test.each([
    ['a number alone', '600', 'has no unit', 'write the unit after it, like "600 mm"'],
    ['an unknown unit', '600 Nm', 'has an unknown unit "Nm"', 'write "600 N·m"'],
    ['a decimal comma', '0,5 mm', 'is not a number with a unit', 'write "0.5 mm"'],
    ['a word', 'wheelbase', 'is not a number with a unit', undefined],
    [
      'a unit written twice',
      '600 mm ± 3 mm',
      'has its unit not at its end alone',
      'write the unit once, like "600 ± 3 mm"',
    ],
    [
      'a width without its unit',
      '600 ± 3',
      'has its unit not at its end alone',
      'write the unit once, like "600 ± 3 mm"',
    ],
    [
      'a gauge without material',
      '18 ga',
      'is a gauge without a material: it may be 0.0478 in of steel, 0.0516 in of galvanized, 0.0403 in of aluminium',
      'write "18 ga steel" or "18 ga galvanized" or "18 ga aluminium"',
    ],
    [
      'a gauge written out',
      '18 gauge steel',
      'is not how a gauge is written here',
      'write "18 ga steel"',
    ],
  ])('%s', (_, text, wrong, fix) => {
    expect(readConstant(text)).toMatchObject({ wrong, fix });
  });
});

test('an unknown unit that can mean one only is mended by it', () => {
  expect(readConstant('600 Nm')).toHaveProperty('mend', '600 N·m');
});
