/** A planted change that is no mistake: the program does the same with it. */
export interface Equivalent {
  readonly file: string;
  readonly was: string;
  readonly instead: string;
  /** What else stands on the line, where `was` alone could be anywhere. */
  readonly beside: string;
  readonly why: string;
}

const from = (
  file: string,
  why: string,
  changes: readonly (readonly [was: string, instead: string, beside?: string])[],
) =>
  changes.map(([was, instead, beside = '']): Equivalent => ({ file, was, instead, beside, why }));

/** Each with the reason; what is not listed and survives is a gap in the tests. */
export const EQUIVALENT: readonly Equivalent[] = [
  ...from('src/money/allocate.ts', 'zero has no sign', [['amount.minor < 0', 'amount.minor <= 0']]),
  ...from('src/money/allocate.ts', 'sorting is stable, and equals keep their order either way', [
    ['a.index - b.index', 'a.index + b.index'],
    ['a === b', 'false'],
    ['a < b', 'a <= b'],
  ]),
  ...from('src/money/money.ts', 'a shift of none divides by one', [['shift >= 0', 'shift > 0']]),
  ...from('src/money/round.ts', 'zero has no sign', [['dividend < 0n', 'dividend <= 0n']]),
  ...from('src/units/dimensions.ts', 'no exponent is off by that very amount', [
    ['Math.abs(exponent - (b[index] ?? 0)) < 1e-9', 'Math.abs(exponent - (b[index] ?? 0)) <= 1e-9'],
    ['Math.abs(exponent) < 1e-9', 'Math.abs(exponent) <= 1e-9'],
  ]),
  ...from('src/units/gauge.ts', 'what is left of a line ends where the line does', [
    [
      String.raw`/^(\d+)\s*(ga|gauge|gage)\b\.?\s*(.*)$/i`,
      String.raw`/^(\d+)\s*(ga|gauge|gage)\b\.?\s*(.*)/i`,
    ],
  ]),
  ...from('src/units/gauge.ts', 'a default for the compiler: it is never taken', [
    ["''", '"Stryker was here!"', "digits = ''"],
    ['tables[material]?.alias', 'tables[material].alias'],
  ]),
  ...from('src/units/unit.ts', 'only the sign of the two slopes counts, and none is zero', [
    ['baseSlope(from, 1) * baseSlope(to, 1)', 'baseSlope(from, 1) / baseSlope(to, 1)'],
    ['baseSlope(from, 1) * baseSlope(to, 1) < 0', 'baseSlope(from, 1) * baseSlope(to, 1) <= 0'],
  ]),
  ...from('src/units/unit.ts', 'the one spelling with two units is among those with two meanings', [
    ['meant.size === 1', 'true'],
  ]),
  ...from('src/units/quantity.ts', 'a format that is made anew is the same', [
    ['made', 'false'],
    ['formats.set(key, format);', ';'],
  ]),
  ...from(
    'src/units/quantity.ts',
    'more text before or after is refused by the reading that follows',
    [
      [String.raw`/^[-−]?\d+,\d+ ?\S*$/`, String.raw`/[-−]?\d+,\d+ ?\S*$/`],
      [String.raw`/^[-−]?\d+,\d+ ?\S*$/`, String.raw`/^[-−]?\d+,\d+ ?\S*/`],
    ],
  ),
  ...from('src/money/allocate.ts', 'a default for the compiler: it is never taken', [
    ["''", '"Stryker was here!"', "[whole = ''"],
  ]),
  ...from('src/money/money.ts', 'a default for the compiler: it is never taken', [
    ["''", '"Stryker was here!"', "[whole = ''"],
  ]),
  ...from('src/measure/uncertain.ts', 'one part added up is that part', [
    ['parts.length === 1', 'false'],
  ]),
  ...from('src/measure/uncertain.ts', 'no source, no limit to the degrees of freedom', [
    ['u === undefined', 'false'],
    ['group[0]?.nu', 'group[0].nu'],
  ]),
  ...from('src/measure/uncertain.ts', 'no sum is of that very size', [
    [
      'Math.abs(sum) < 1e-14 * largest * parts.length',
      'Math.abs(sum) <= 1e-14 * largest * parts.length',
    ],
  ]),
  ...from('src/measure/uncertainty.ts', 'what is divided by zero is without limit, too', [
    ['below === 0', 'false'],
  ]),
  ...from('src/measure/verdict.ts', 'no end of an interval lies at that very rounding', [
    ['low >= lower - slack', 'low > lower - slack'],
    ['high <= upper + slack', 'high < upper + slack'],
    ['high < lower - slack', 'high <= lower - slack'],
    ['low > upper + slack', 'low >= upper + slack'],
  ]),
  ...from('src/measure/verdict.ts', 'nothing is less or more than a bound that is not there', [
    ['lower !== undefined', 'true'],
    ['upper !== undefined', 'true'],
  ]),
  ...from('src/measure/statistics.ts', 'only the square of the rest counts', [
    ['rest += value - centre', 'rest -= value - centre'],
  ]),
  ...from('src/measure/cross-check.ts', 'it only spares the making of a key', [
    ['checks.size === 0', 'false'],
  ]),
  ...from('src/measure/cross-check.ts', 'a default for the compiler: it is never taken', [
    ['item.base.budget[index]?.sensitivity', 'item.base.budget[index].sensitivity'],
  ]),
  ...from('src/measure/draw-blocks.ts', 'a typed array has no place beyond its end', [
    ['i < BLOCK', 'i <= BLOCK'],
  ]),
  ...from('src/measure/draw-blocks.ts', 'turns counted down come to nothing as often', [
    ['turn++', 'turn--'],
  ]),
];
