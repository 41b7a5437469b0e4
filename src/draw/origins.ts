import type { OriginLine } from '../parts/origin-lines.ts';
import type { Words } from '../words/words.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const LINE = 19;
const GAP = 34;
/** Bars stand between these per cents: names left of them, shares right. */
const LEFT = 17;
const RIGHT = 84;

/**
 * Shares of the sources, each as three wide lines on narrow ones:
 *
 *     The donor
 *     pieces  =========------------------  32 %
 *     mass    ===============------------  51 %
 *     money   ====-----------------------  12 %
 *
 * A share below nothing, where credits outweigh, has no wide line.
 */
export function drawOrigins(lines: readonly OriginLine[], { parts }: Words): Drawing {
  const words = parts.sources;
  const drawn: SvgNode[] = [];
  let y = 0;
  for (const line of lines) {
    y += GAP - LINE;
    drawn.push(node('text', { x: '0%', y, 'font-weight': 600 }, line.name));
    for (const [word, share] of sharesOf(line, words.bars)) {
      y += LINE;
      drawn.push(...bar(word, share, y));
    }
    y += GAP - LINE;
  }
  return fluidDrawing(y, words.drawing(lines.length), drawn);
}

function sharesOf(
  { pieces, mass, cost }: OriginLine,
  words: Words['parts']['sources']['bars'],
): (readonly [word: string, share: number])[] {
  return (
    [
      [words.pieces, pieces],
      [words.mass, mass],
      [words.money, cost],
    ] as const
  ).flatMap(([word, shared]) => (shared === undefined ? [] : [[word, shared.share] as const]));
}

function bar(word: string, share: number, y: number): SvgNode[] {
  const end = LEFT + Math.min(1, Math.max(0, share)) * (RIGHT - LEFT);
  const line = (from: number, to: number, name: string) =>
    node('line', { x1: across(from), x2: across(to), y1: y - 4, y2: y - 4, class: name });
  return [
    node('text', { x: '0%', y, class: 'small' }, word),
    line(LEFT, RIGHT, 'grid'),
    line(LEFT, end, 'wide'),
    node('text', { x: '100%', y, class: 'small', 'text-anchor': 'end' }, showShare(share)),
  ];
}

/** A share in whole per cent, with a true minus sign. */
export function showShare(share: number): string {
  return `${Math.round(share * 100)}\u00a0%`.replace('-', '−');
}
