import type { Chain } from '../parts/chain.ts';
import type { ChainStep } from '../parts/chain-step.ts';
import { type Day, daysBetween, showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { linearScale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const NUMBERS = 13;
const LINE = 32;
const HEIGHT = 64;
/** Marks nearer than this share one label, as 360 pixels hold no more side by side. */
const NEAR_PERCENT = 7;

/**
 * The life of a part on one narrow line, to scale, with a wide mark at each step and a wide stretch while it was prepared. The numbers
 * are those of the list beside it:
 *
 *      1     2–3          4
 *      |-----||===========|--------
 *      26 Jul 2025       1 Mar 2026
 *
 * An open stretch ends on the day of the view. None for a part whose steps are all of one day.
 */
export function drawChain(
  { day, part, steps, preparations }: Chain,
  language: string,
): Drawing | undefined {
  const first = steps[0]?.date;
  const last = preparations.some(({ back }) => back === undefined) ? day : steps.at(-1)?.date;
  if (first === undefined || last === undefined || first === last) return undefined;

  const place = linearScale([0, daysBetween(first, last)], [1.5, 98.5]);
  const at = (date: Day) => place(daysBetween(first, date));
  const line = (from: number, to: number, name: string) =>
    node('line', { x1: across(from), x2: across(to), y1: LINE, y2: LINE, class: name });
  const prepared = preparations.map(({ row, back }) =>
    line(at(row.date), at(back ?? last), 'wide'),
  );
  const marks = steps.map(({ date }) =>
    node('line', {
      x1: across(at(date)),
      x2: across(at(date)),
      y1: LINE - 9,
      y2: LINE + 9,
      class: 'wide',
    }),
  );
  const { drawing } = wordsOf(language).parts.part;
  const title = drawing({ part: part.name, steps: steps.length, first, last });
  return fluidDrawing(HEIGHT, title, [
    line(0, 100, 'narrow'),
    ...prepared,
    ...marks,
    ...labels(steps, at),
    endOfLine(first, 'start', language),
    endOfLine(last, 'end', language),
  ]);
}

function labels(steps: readonly ChainStep[], at: (day: Day) => number): SvgNode[] {
  const groups: { from: number; to: number; left: number; right: number }[] = [];
  for (const [index, { date: day }] of steps.entries()) {
    const group = groups.at(-1);
    const percent = at(day);
    if (group && percent - group.right < NEAR_PERCENT) {
      group.to = index + 1;
      group.right = percent;
    } else groups.push({ from: index + 1, to: index + 1, left: percent, right: percent });
  }
  return groups.map(({ from, to, left, right }) =>
    node(
      'text',
      { ...anchored((left + right) / 2), y: NUMBERS },
      from === to ? String(from) : `${from}–${to}`,
    ),
  );
}

/** A label at an end of the line stays on the sheet. */
function anchored(percent: number): Record<string, string> {
  if (percent < 4) return { x: '0%' };
  return percent > 96
    ? { x: '100%', 'text-anchor': 'end' }
    : { x: across(percent), 'text-anchor': 'middle' };
}

function endOfLine(day: Day, anchor: 'start' | 'end', language: string): SvgNode {
  const x = anchor === 'start' ? '0%' : '100%';
  return node(
    'text',
    { x, y: HEIGHT - 6, 'text-anchor': anchor, class: 'small' },
    showShortDay(day, language),
  );
}
