import type { CostRecord } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { kindOf } from '../units/unit.ts';
import type { Rule } from './rule.ts';

/** A cost row says which phase bears it, whole or split; its tax, share and mass make sense. */
export const costRowsFit: Rule = ({ project }) =>
  project.lists.costs.flatMap(({ raw, value }) => [
    ...phases(raw, value),
    ...oneOf(raw, value.parts, 'parts', value.splitParts),
    ...tax(raw, value),
    ...share(raw, value),
    ...mass(raw, value),
  ]);

function at(raw: RawRecord, field: string, code: string, wrong: string, fix: string): Problem[] {
  return [problemAt(raw.placeOf([field]), `cost/${code}`, wrong, fix)];
}

function phases(raw: RawRecord, { phase, splitPhases }: CostRecord): Problem[] {
  if (phase !== undefined || splitPhases !== undefined)
    return oneOf(raw, phase, 'phase', splitPhases);
  const fix = 'fill in "phase", or "split-phases" like floor:2 paint:1';
  return at(raw, 'phase', 'no-phase', '"phase" is missing', fix);
}

function oneOf(raw: RawRecord, whole: unknown, field: string, split: unknown): Problem[] {
  if (whole === undefined || split === undefined) return [];
  const other = field === 'phase' ? 'split-phases' : 'split-parts';
  return at(
    raw,
    field,
    'split-twice',
    `"${field}" stands beside "${other}"`,
    'keep one of the two',
  );
}

function tax(raw: RawRecord, { tax: side, taxRate }: CostRecord): Problem[] {
  if (side !== undefined && taxRate === undefined)
    return at(
      raw,
      'tax',
      'tax-rate',
      `tax: "${side}" has no rate`,
      'fill in "tax-rate", like 20 %',
    );
  if (side === undefined && taxRate !== undefined)
    return at(
      raw,
      'tax-rate',
      'tax-side',
      `tax-rate: "${taxRate} %" has no "tax" beside it`,
      'write inside or outside in "tax"',
    );
  return [];
}

function share(raw: RawRecord, { share: percent }: CostRecord): Problem[] {
  if (percent === undefined || Number(percent) <= 100) return [];
  return at(
    raw,
    'share',
    'share',
    `share: "${percent} %" is more than the whole`,
    'write at most 100 %',
  );
}

function mass(raw: RawRecord, { kind, mass: weighed }: CostRecord): Problem[] {
  if (weighed === undefined) return [];
  const shown = `mass: "${weighed.value} ${weighed.unit}"`;
  if (kind !== 'scrap')
    return at(
      raw,
      'mass',
      'mass',
      `${shown} stands in a row of kind "${kind}"`,
      'write "scrap" in kind, or leave the mass out',
    );
  return kindOf(weighed.unit) === 'mass'
    ? []
    : at(raw, 'mass', 'mass', `${shown} is no mass`, 'write it in kg or lb');
}
