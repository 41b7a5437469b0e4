import { across, node, type SvgNode } from './svg.ts';

/** A part of a whole as a wide line on a narrow one. A part below nothing (credits) draws no wide line. */
export function drawShare(part: number, whole: number): SvgNode {
  const share = whole > 0 ? Math.min(1, Math.max(0, part / whole)) : 0;
  return node(
    'svg',
    { width: '100%', height: 14, 'aria-hidden': 'true', class: 'drawing' },
    node('line', { x1: '0%', x2: '100%', y1: 7, y2: 7, class: 'grid' }),
    node('line', { x1: '0%', x2: across(share * 100), y1: 7, y2: 7, class: 'wide' }),
  );
}
