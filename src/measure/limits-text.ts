import type { Spec } from '../model/kinds.ts';
import { type Quantity, showQuantity } from '../units/quantity.ts';

/** The limits of a spec in words, or undefined when it has none: `640 kg to 720 kg`, `at most 5 mm`, `0 mm ± 0.2 mm per 300 mm`. */
export function limitsText(spec: Spec, language: string): string | undefined {
  const show = ({ value, unit, decimals }: Quantity) =>
    showQuantity(value, unit, decimals, language);
  const text = bounds(spec, show);
  if (text === undefined || !spec.per) return text;
  return spec.over
    ? `${text} per ${show(spec.per)}, read over ${show(spec.over)}`
    : `${text} per ${show(spec.per)}`;
}

function bounds(
  { min, max, nominal, tolerance }: Spec,
  show: (quantity: Quantity) => string,
): string | undefined {
  if (nominal && tolerance) return `${show(nominal)} ± ${show(tolerance)}`;
  if (min && max) return `${show(min)} to ${show(max)}`;
  if (min) return `at least ${show(min)}`;
  if (max) return `at most ${show(max)}`;
  return nominal && `nominal ${show(nominal)}`;
}
