import { type Reader, showDifference, showMeasured } from '../measure/show.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import type { SpecValue } from '../measure/worked.ts';
import { wordsOf } from '../words/words.ts';
import { arrow, uncertaintyBar } from './dimension.ts';
import { airy, linearScale, type Scale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const HEIGHT = 124;
const BEFORE = 34;
const AFTER = 92;
const LEFT = 4;

/**
 * Before and after of one spec as dimension lines from a common edge (ISO 129 manner):
 *
 *     |            806 ± 2.4 kg
 *     |<- ·· - - ·· - - ·· - ->|           before: long-dash double-dot
 *     |       691 ± 2.4 kg
 *     |<================>|                 after: wide
 *     ^ zigzag: the scale does not start at zero
 */
export function drawChange(
  { spec, before, after, change, limits }: SpecFigures,
  reader: Reader,
): Drawing | undefined {
  if (before === undefined || after === undefined || change === undefined) return undefined;
  const ends = [before, after].flatMap(({ value, U }) => [value - (U ?? 0), value + (U ?? 0)]);
  const bounds = [limits?.lower, limits?.upper]
    .filter((bound) => bound !== undefined)
    .filter((bound) => isNear(bound, ends));
  const [least, most] = airy([...ends, ...bounds]);
  const fromZero = least >= 0 && least < most * 0.25;
  const scale = linearScale([fromZero ? 0 : least, most], [LEFT, 96]);

  const edge = [
    node('line', { x1: across(LEFT), x2: across(LEFT), y1: 12, y2: HEIGHT - 8, class: 'narrow' }),
    ...(fromZero ? [] : [zigzag(BEFORE, 'before'), zigzag(AFTER, 'after')]),
  ];
  const limitLines = bounds.flatMap((bound) => [
    node('line', {
      x1: across(scale(bound)),
      x2: across(scale(bound)),
      y1: 12,
      y2: HEIGHT - 14,
      class: 'limit',
    }),
    node(
      'text',
      { x: across(scale(bound)), y: HEIGHT, 'text-anchor': 'middle', class: 'small' },
      bound === limits?.lower ? 'min' : 'max',
    ),
  ]);
  const difference = showDifference(
    {
      value: change.value,
      U: change.U,
      unit: spec.unit,
      decimals: Math.max(before.decimals, after.decimals),
    },
    reader.language,
  );
  const title = wordsOf(reader.language).measure.changes.drawing({
    name: spec.name,
    before: showMeasured(before, reader).text,
    after: showMeasured(after, reader).text,
    difference,
  });
  return fluidDrawing(HEIGHT, title, [
    ...edge,
    ...limitLines,
    ...dimension(before, BEFORE, 'before', scale, reader),
    ...dimension(after, AFTER, 'wide', scale, reader),
  ]);
}

/** A limit far from both values would squeeze them into a corner; it stands in the table instead. */
function isNear(bound: number, ends: readonly number[]): boolean {
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const reach = 1.5 * (most - least);
  return bound >= least - reach && bound <= most + reach;
}

function dimension(
  measured: SpecValue,
  y: number,
  line: 'before' | 'wide',
  scale: Scale,
  reader: Reader,
): SvgNode[] {
  const x = scale(measured.value);
  const { lineBefore, lineAfter } = wordsOf(reader.language).measure.changes;
  const text = (line === 'before' ? lineBefore : lineAfter)(showMeasured(measured, reader).text);
  const nodes = [
    node('line', { x1: across(LEFT), x2: across(x), y1: y, y2: y, class: line }),
    node('line', { x1: across(x), x2: across(x), y1: y - 6, y2: y + 8, class: 'narrow' }),
    node('text', { x: across(LEFT), y: y - 9, dx: 6 }, text),
  ];
  if (measured.U === undefined) return [...nodes, arrow(x, y)];
  const [low, high] = [scale(measured.value - measured.U), scale(measured.value + measured.U)];
  return [...nodes, arrow(x, y), ...uncertaintyBar(low, high, y + 12)];
}

/** The cut in a line whose scale does not start at zero. */
function zigzag(y: number, name: string): SvgNode {
  return node(
    'svg',
    { x: across(LEFT), y: y - 8, width: 26, height: 16, class: `cut-${name}` },
    node('path', { d: 'M8 8 L12 1 L17 15 L21 8', class: 'cut' }),
  );
}
