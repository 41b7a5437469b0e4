import { inputText } from '../calc/told.ts';
import { showNumber, showQuantity, withUnit } from '../units/quantity.ts';
import { baseSlope, fromBaseUnit } from '../units/unit.ts';
import { wordsOf } from '../words/words.ts';
import { decimalsFor } from './uncertainty.ts';
import type { Worked } from './worked.ts';

/** One line of an uncertainty budget as a reader sees it. */
export interface BudgetRow {
  readonly name: string;
  readonly what: string;
  /** The spec and the id of its value, for a link; undefined for a constant. */
  readonly spec: string | undefined;
  readonly value: string | undefined;
  readonly shown: string;
  readonly u: string;
  readonly sensitivity: string;
  readonly share: string;
}

/** The budget of a worked-out value (GUM 7.2.7): inputs in their own units, sensitivities as result unit per input unit, shares of u². */
export function budgetRows(worked: Worked, language: string): BudgetRow[] {
  const { recipe, base, unit, sources } = worked;
  const { calculation } = recipe;
  const words = wordsOf(language);
  const { budget } = words.measure;
  const rows = recipe.inputs.map((input, index): BudgetRow => {
    const line = base.budget[index] ?? {
      name: input.name,
      value: Number.NaN,
      u: 0,
      sensitivity: 0,
      part: 0,
      share: 0,
    };
    const source = sources[index];
    const own = source?.unit ?? (input.from === 'constant' ? input.unit : '1');
    const value = fromBaseUnit(line.value, own);
    const slope = baseSlope(own, value);
    const u = Math.abs(line.u / slope);
    const sensitivity = (line.sensitivity * slope) / baseSlope(unit, worked.value);
    return {
      name: input.name,
      what: (calculation && inputText(calculation, input.name, words)) ?? input.name,
      spec: input.from === 'spec' ? input.spec : undefined,
      value: source?.id,
      shown:
        input.from === 'constant' && u === 0
          ? input.text
          : showQuantity(value, own, u > 0 ? decimalsFor(u) : (source?.decimals ?? 3), language),
      u:
        u === 0
          ? input.from === 'constant'
            ? budget.exact
            : budget.notKnown
          : withUnit(digits(u, 2, language), own),
      sensitivity: `${digits(sensitivity, 3, language)} ${ratioOfUnits(unit, own)}`.trim(),
      share: u === 0 ? '–' : `${showNumber(100 * line.share, 1, language)} %`,
    };
  });
  if (Math.abs(base.sharedShare) < 5e-4) return rows;
  const shared = {
    name: 'r',
    spec: undefined,
    value: undefined,
    shown: '',
    u: '',
    sensitivity: '',
  };
  if (Math.abs(base.sharedShare) > 1) {
    // The inputs move together, so that shares taken one by one say nothing.
    const what = budget.moveTogether;
    return [...rows.map((row) => ({ ...row, share: '–' })), { ...shared, what, share: '' }];
  }
  const what = budget.correlation;
  return [
    ...rows,
    { ...shared, what, share: `${showNumber(100 * base.sharedShare, 1, language)} %` },
  ];
}

function ratioOfUnits(result: string, input: string): string {
  if (result === input) return '';
  return input === '1' || input === 'count'
    ? result
    : `${result}/${input.includes('/') ? `(${input})` : input}`;
}

/** A number with significant digits; very large and very small ones in powers of ten. */
function digits(size: number, count: number, language: string): string {
  if (size === 0) return '0';
  // Rounded first, so that 0.0996 with two digits is 0.10.
  const value = Number(size.toPrecision(count));
  const exponent = Math.floor(Math.log10(Math.abs(value)));
  if (exponent > 5 || exponent < -5)
    return `${showNumber(value / 10 ** exponent, count - 1, language)}·10^${exponent}`.replace(
      '^-',
      '^−',
    );
  return showNumber(value, Math.max(0, count - 1 - exponent), language);
}
