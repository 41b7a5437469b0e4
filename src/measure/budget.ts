import { showNumber, withUnit } from '../units/quantity.ts';
import { fromBaseUnit } from '../units/unit.ts';
import type { CrossCheck } from './cross-check.ts';
import type { Measured } from './reading.ts';
import type { SpecValue } from './spec-value.ts';
import { coverageFactor } from './student-t.ts';
import { combine, decimalsFor, usedFreedom } from './uncertainty.ts';
import type { Worked } from './worked.ts';

/** How a reading's value and U came about, line by line, with numbers put in. */
export function budgetOf(measured: Measured, language: string): string[] {
  const { value, unit, s, n, components, decimals } = measured;
  const size = sizes(language);
  const lines = [
    n === 1
      ? `one value, in ${unit}`
      : `mean of ${n} values: ${showNumber(value, decimals + 2, language)} ${unit}`,
  ];
  if (s !== undefined) lines.push(`standard deviation s = ${size(s)} ${unit}, n − 1 = ${n - 1}`);
  // Readings taken together carry their scatter in one piece for each repeat; here it is one line again.
  for (const [name, parts] of Map.groupBy(components, (component) => component.name)) {
    lines.push(`u of ${name}: ${parts[0]?.how} = ${size(combine(parts))} ${unit}`);
  }
  if (measured.U === undefined)
    return [
      ...lines,
      'the instrument states no error, and one value shows no scatter: U is not known',
    ];
  return [...lines, ...expansion(measured, language)];
}

/** The last lines of a working: combined u, degrees of freedom, U. */
export function expansion(
  { u, nu, U, unit }: Pick<SpecValue, 'u' | 'nu' | 'U' | 'unit'>,
  language: string,
): string[] {
  if (u === undefined || U === undefined)
    return ['nothing is known of the uncertainty of what went in: U is not known'];
  const size = sizes(language);
  const freedom = usedFreedom(nu);
  const k = coverageFactor(0.95, freedom);
  return [
    `combined u = ${size(u)} ${unit}, degrees of freedom ${Number.isFinite(freedom) ? freedom : '∞'}`,
    `U = k·u = ${showNumber(k, 2, language)} × ${size(u)} = ${size(U)} ${unit} at 95 %`,
  ];
}

/** What the drawn distribution says beside the formula, in a sentence. */
export function crossCheckText(worked: Worked, check: CrossCheck, language: string): string {
  const [a, b] = [fromBaseUnit(check.low, worked.unit), fromBaseUnit(check.high, worked.unit)].sort(
    (x, y) => x - y,
  ) as [number, number];
  const places = decimalsFor((b - a) / 2) + 1;
  const interval = withUnit(
    `${showNumber(a, places, language)} to ${showNumber(b, places, language)}`,
    worked.unit,
  );
  const drawn = `A million draws (JCGM 101) give ${interval} at 95 %`;
  return check.agrees
    ? `${drawn}, which agrees with ± U.`
    : `${drawn}. That is more apart from ± U than its last digit allows, so the drawn interval is the one shown.`;
}

/** Sizes of uncertainties with three digits. */
function sizes(language: string): (size: number) => string {
  return (size) =>
    size === 0 ? '0' : showNumber(size, Math.max(0, decimalsFor(size) + 1), language);
}
