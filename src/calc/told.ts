import type { CalculationTexts } from '../words/calc-texts.ts';
import type { Words } from '../words/words.ts';
import type { Calculation } from './calculation.ts';

/** A calculation's texts in the language of the words, or in its own English where they have none. */
export function calculationTexts(
  calculation: Calculation,
  words: Pick<Words, 'calc'>,
): CalculationTexts {
  return words.calc[calculation.name] ?? ownTexts(calculation);
}

function ownTexts({
  title,
  inputs,
  many,
  assumptions,
  caution,
  requires = [],
}: Calculation): CalculationTexts {
  const listed = many ? [[many.key, many.what]] : [];
  const named = Object.entries(inputs).map(([symbol, { what }]) => [symbol, what]);
  return {
    title,
    inputs: Object.fromEntries([...named, ...listed]),
    assumptions,
    caution,
    requires: requires.map(({ otherwise }) => otherwise),
  };
}

/** What one name of a calculation's formula stands for; `x1 … xn` are the values of its list. */
export function inputText(
  calculation: Calculation,
  name: string,
  words: Pick<Words, 'calc'>,
): string | undefined {
  const { inputs } = calculationTexts(calculation, words);
  const { many } = calculation;
  return many && !(name in calculation.inputs) ? inputs[many.key] : inputs[name];
}
