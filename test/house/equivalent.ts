/** A planted change that is no mistake: the program does the same with it. */
export interface Equivalent {
  readonly file: string;
  readonly was: string;
  readonly instead: string;
  readonly why: string;
}

const from = (file: string, why: string, changes: readonly (readonly [string, string])[]) =>
  changes.map(([was, instead]): Equivalent => ({ file, was, instead, why }));

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
];
