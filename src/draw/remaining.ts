import { type Reader, type Showable, showMeasured } from '../measure/show.ts';
import type { Grade } from '../model/kinds.ts';
import { wordsOf } from '../words/words.ts';
import { arrow, uncertaintyBar } from './dimension.ts';
import { linearScale, type Scale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

/** Thickness left of one version of a part, in per cent of its nominal. */
export interface RemainingBar {
  readonly label: string;
  readonly remaining: Showable;
  /** Wide for what is looked at now, double-dot for what was before it. */
  readonly line: 'wide' | 'before';
}

const TOP = 8;
const STEP = 46;
const FOOT = 22;
const LEFT = 1;

/**
 * Thickness left as dimension lines from zero (ISO 129 manner), with the grades' limits across them:
 *
 *     | as found (65 ± 2 %)   |    |
 *     |<- ·· - - ·· - ->|     |    |
 *     |               |-+-|   |    |         U
 *     0               50      70   85
 */
export function drawRemaining(
  bars: readonly RemainingBar[],
  scale: readonly Grade[],
  reader: Reader,
): Drawing | undefined {
  if (bars.length === 0) return undefined;
  const ends = bars.map(({ remaining }) => remaining.value + (remaining.U ?? 0));
  const x = linearScale([0, Math.max(104, ...ends)], [LEFT, 98]);
  const floor = TOP + STEP * bars.length;
  const texts = bars.map(
    ({ label, remaining }) => `${label} ${showMeasured(remaining, reader).text}`,
  );
  const title = wordsOf(reader.language).parts.survey.drawing(texts.join('; '));
  return fluidDrawing(floor + FOOT, title, [
    node('line', { x1: across(LEFT), x2: across(LEFT), y1: TOP, y2: floor, class: 'narrow' }),
    ...limitsOf(scale).flatMap((limit) => limitLine(limit, x, floor)),
    ...bars.flatMap((bar, index) => dimension(bar, texts[index] ?? '', x, TOP + STEP * index + 24)),
  ]);
}

function limitsOf(scale: readonly Grade[]): readonly number[] {
  const stated = scale.flatMap(({ remainingAtLeast }) => remainingAtLeast ?? []).map(Number);
  return [...new Set(stated)];
}

function limitLine(limit: number, scale: Scale, floor: number): SvgNode[] {
  const x = across(scale(limit));
  return [
    node('line', { x1: x, x2: x, y1: TOP, y2: floor, class: 'limit' }),
    node('text', { x, y: floor + 16, 'text-anchor': 'middle', class: 'small' }, String(limit)),
  ];
}

function dimension(
  { remaining: { value, U }, line }: RemainingBar,
  words: string,
  scale: Scale,
  y: number,
): SvgNode[] {
  const end = scale(Math.max(0, value));
  const nodes = [
    node('line', { x1: across(LEFT), x2: across(end), y1: y, y2: y, class: line }),
    node('line', { x1: across(end), x2: across(end), y1: y - 6, y2: y + 8, class: 'narrow' }),
    node('text', { x: across(LEFT), y: y - 8, dx: 6 }, words),
    arrow(end, y),
  ];
  if (U === undefined) return nodes;
  return [...nodes, ...uncertaintyBar(scale(Math.max(0, value - U)), scale(value + U), y + 11)];
}
