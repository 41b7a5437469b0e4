import { showNumber, withUnit } from '../units/quantity.ts';
import { fromBaseUnit } from '../units/unit.ts';
import { wordsOf } from '../words/words.ts';
import type { CrossCheck } from './cross-check.ts';
import type { Measured } from './reading.ts';
import { coverageFactor } from './student-t.ts';
import { combine, decimalsFor, usedFreedom } from './uncertainty.ts';
import type { SpecValue, Worked } from './worked.ts';

/** How a reading's value and U came about, line by line, with numbers put in. */
export function budgetOf(measured: Measured, language: string): string[] {
  const { value, unit, s, n, components, decimals } = measured;
  const size = sizes(language);
  const { budget } = wordsOf(language).measure;
  const lines = [
    n === 1
      ? budget.one(unit)
      : budget.mean(n, `${showNumber(value, decimals + 2, language)} ${unit}`),
  ];
  if (s !== undefined) lines.push(budget.deviation(`${size(s)} ${unit}`, n - 1));
  // Readings taken together carry their scatter in one piece for each repeat; here it is one line again.
  for (const [, parts] of Map.groupBy(components, ({ name, zero }) => `${name} ${zero}`)) {
    const [{ name, zero, how } = { name: '', zero: undefined, how: '' }] = parts;
    const own = budget.parts[name as keyof typeof budget.parts] ?? name;
    const source = zero === undefined ? own : budget.shared(own, zero);
    lines.push(budget.part(source, inLanguage(how, language), `${size(combine(parts))} ${unit}`));
  }
  if (measured.U === undefined) return [...lines, budget.noError];
  return [...lines, ...expansion(measured, language)];
}

/** A working out with its numbers as a language writes them; they are made where no language is known. */
function inLanguage(how: string, language: string): string {
  return how.replaceAll(/\d[\d,]*(?:\.(\d+))?/g, (number, decimals = '') =>
    showNumber(Number(number.replaceAll(',', '')), decimals.length, language),
  );
}

/** The last lines of a working: combined u, degrees of freedom, U. */
export function expansion(
  { u, nu, U, unit }: Pick<SpecValue, 'u' | 'nu' | 'U' | 'unit'>,
  language: string,
): string[] {
  const { budget } = wordsOf(language).measure;
  if (u === undefined || U === undefined) return [budget.nothingKnown];
  const size = sizes(language);
  const freedom = usedFreedom(nu);
  const k = coverageFactor(0.95, freedom);
  return [
    budget.combined(`${size(u)} ${unit}`, Number.isFinite(freedom) ? String(freedom) : '∞'),
    budget.expanded(showNumber(k, 2, language), size(u), `${size(U)} ${unit}`),
  ];
}

/** What the drawn distribution says beside the formula, in a sentence. */
export function crossCheckText(worked: Worked, check: CrossCheck, language: string): string {
  const [a, b] = [fromBaseUnit(check.low, worked.unit), fromBaseUnit(check.high, worked.unit)].sort(
    (x, y) => x - y,
  ) as [number, number];
  const { budget } = wordsOf(language).measure;
  const places = decimalsFor((b - a) / 2) + 1;
  const interval = withUnit(
    budget.interval(showNumber(a, places, language), showNumber(b, places, language)),
    worked.unit,
  );
  const drawn = budget.drawn(showNumber(check.draws, 0, language), interval);
  return check.agrees ? budget.agrees(drawn) : budget.apart(drawn);
}

/** Sizes of uncertainties with three digits. */
function sizes(language: string): (size: number) => string {
  return (size) =>
    size === 0 ? '0' : showNumber(size, Math.max(0, decimalsFor(size) + 1), language);
}
