import { showNumber } from '../units/quantity.ts';
import type { Measured } from './reading.ts';
import { coverageFactor } from './student-t.ts';
import { decimalsFor, usedFreedom } from './uncertainty.ts';

/** How a reading's value and U came about, line by line, with numbers put in. */
export function budgetOf(
  { reading, value, unit, s, parts, u, nu, U, decimals }: Measured,
  language: string,
): string[] {
  const n = reading.values.length;
  const show = (size: number) => showNumber(size, Math.max(0, decimalsFor(size) + 1), language);
  const lines = [
    n === 1
      ? `one value, in ${unit}`
      : `mean of ${n} values: ${showNumber(value, decimals + 2, language)} ${unit}`,
  ];
  if (s !== undefined)
    lines.push(`standard deviation s = ${s === 0 ? '0' : show(s)} ${unit}, n − 1 = ${n - 1}`);
  for (const part of parts)
    lines.push(`u of ${part.name}: ${part.how} = ${part.u === 0 ? '0' : show(part.u)} ${unit}`);
  if (u === undefined || U === undefined)
    return [
      ...lines,
      'the instrument states no error, and one value shows no scatter: U is not known',
    ];

  const freedom = usedFreedom(nu);
  const k = coverageFactor(0.95, freedom);
  lines.push(
    `combined u = ${show(u)} ${unit}, degrees of freedom ${Number.isFinite(freedom) ? freedom : '∞'}`,
  );
  lines.push(`U = k·u = ${showNumber(k, 2, language)} × ${show(u)} = ${show(U)} ${unit} at 95 %`);
  return lines;
}
