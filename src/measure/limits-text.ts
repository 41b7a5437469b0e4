import type { Spec } from '../model/kinds.ts';
import { type Quantity, showQuantity } from '../units/quantity.ts';
import { type Words, wordsOf } from '../words/words.ts';

/** The limits of a spec in words, or undefined when it has none: `640 kg to 720 kg`, `at most 5 mm`, `0 mm ± 0.2 mm per 300 mm`. */
export function limitsText(spec: Spec, language: string): string | undefined {
  const show = ({ value, unit, decimals }: Quantity) =>
    showQuantity(value, unit, decimals, language);
  const { limits } = wordsOf(language).measure;
  const text = bounds(spec, show, limits);
  if (text === undefined || !spec.per) return text;
  return spec.over
    ? limits.perReadOver(text, show(spec.per), show(spec.over))
    : limits.per(text, show(spec.per));
}

function bounds(
  { min, max, nominal, tolerance }: Spec,
  show: (quantity: Quantity) => string,
  limits: Words['measure']['limits'],
): string | undefined {
  if (nominal && tolerance) return `${show(nominal)} ± ${show(tolerance)}`;
  if (min && max) return limits.between(show(min), show(max));
  if (min) return limits.atLeast(show(min));
  if (max) return limits.atMost(show(max));
  return nominal && limits.nominal(show(nominal));
}
