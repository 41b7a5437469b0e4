import { across, node, type SvgNode } from './svg.ts';

/** U as a narrow bar with stops at both ends. */
export function uncertaintyBar(low: number, high: number, y: number): SvgNode[] {
  const bar = node('line', { x1: across(low), x2: across(high), y1: y, y2: y, class: 'narrow' });
  const stops = [low, high].map((x) =>
    node('line', { x1: across(x), x2: across(x), y1: y - 3, y2: y + 3, class: 'narrow' }),
  );
  return [bar, ...stops];
}

/** Filled arrowhead that points at its place from the left. */
export function arrow(percent: number, y: number): SvgNode {
  return node(
    'svg',
    { x: across(percent), y: y - 4, width: 10, height: 8, overflow: 'visible' },
    node('path', { d: 'M0 4 L-10 1 L-10 7 Z', class: 'ink' }),
  );
}
