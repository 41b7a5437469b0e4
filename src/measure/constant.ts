import { readGauge } from '../units/gauge.ts';
import { type NoQuantity, readNumber, readQuantity } from '../units/quantity.ts';
import type { Component, Uncertain } from './uncertain.ts';

/** A value given in a file instead of read, in the unit it was written in. */
export interface Constant extends Uncertain {
  readonly unit: string;
}

/**
 * Reads `600 mm`, `600 ± 2 mm` (half-width of what is possible, so a/√3) or a sheet gauge with its material, `18 ga steel`.
 * A constant without ± counts as exact.
 */
export function readConstant(text: string): Constant | NoQuantity {
  if (/\bga\b|gauge/.test(text)) {
    const gauge = readGauge(text);
    return 'wrong' in gauge ? gauge : { value: gauge.value, unit: gauge.unit, components: [] };
  }
  const at = /±|\+\/-/.exec(text);
  const before = text.slice(0, at?.index).trim();
  const match =
    at &&
    /^\s*(\d{1,15}(?:\.\d{1,60})?)(?!\d)\s*(\S.*)?$/.exec(text.slice(at.index + at[0].length));
  if (match && (match[2] === undefined || !/\d$/.test(before)))
    return {
      wrong: 'has its unit not at its end alone',
      fix: 'write the unit once, like "600 ± 3 mm"',
    };
  const quantity = readQuantity(match ? `${before} ${match[2]}` : text);
  if ('wrong' in quantity) return quantity;

  const { value, unit } = quantity;
  const width = readNumber(match?.[1] ?? '');
  return { value, unit, components: width ? [statedPart(width)] : [] };
}

function statedPart(width: number): Component {
  return {
    key: 'stated',
    group: 'stated',
    name: 'stated ±',
    u: width / Math.sqrt(3),
    nu: Number.POSITIVE_INFINITY,
    shape: 'rectangular',
    how: `a/√3 = ${width}/√3`,
  };
}
