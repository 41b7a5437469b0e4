import type { SpecFigures } from '../measure/spec-figures.ts';
import type { SpecValue } from '../measure/worked.ts';
import { daysBetween, showShortDay } from '../time/day.ts';
import { showNumber } from '../units/quantity.ts';
import { convertUnit } from '../units/unit.ts';
import { wordsOf } from '../words/words.ts';
import { airy, linearScale, roundTicks, type Scale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const HEIGHT = 240;
const TOP = 18;
const BOTTOM = 202;
/** Readings stand between these per cents; the numbers of the scale lie on its lines, left of them. */
const LEFT = 17;
const RIGHT = 97;

/**
 * Readings of a spec over time with their U as bars, limits narrow, target dashed.
 * A zigzag on the scale says that it does not start at zero. Before and as-found readings are open, after and final ones filled.
 */
export function drawHistory(
  { spec, history, limits }: SpecFigures,
  language: string,
): Drawing | undefined {
  const [first] = history;
  const last = history.at(-1);
  if (first === undefined || last === undefined) return undefined;

  const target = spec.target && convertUnit(spec.target.value, spec.target.unit, spec.unit);
  const bounds = [limits?.lower, limits?.upper, target].filter((bound) => bound !== undefined);
  const range = airy([
    ...history.flatMap(({ value, U }) => [value - (U ?? 0), value + (U ?? 0)]),
    ...bounds,
  ]);
  const down = linearScale(range, [BOTTOM, TOP]);
  const days = daysBetween(first.date, last.date);
  const place = linearScale([0, days], [LEFT, RIGHT]);
  const at = (item: SpecValue) => place(daysBetween(first.date, item.date));

  const ticks = roundTicks(range, 4);
  const places = decimalsOfStep(ticks);
  const scale = ticks.flatMap((tick) => [
    node('line', { x1: '0%', x2: '100%', y1: down(tick), y2: down(tick), class: 'grid' }),
    node(
      'text',
      { x: '0%', y: down(tick) - 4, class: 'small' },
      showNumber(tick, places, language),
    ),
  ]);
  const lines = [
    ...(limits?.lower === undefined ? [] : level(limits.lower, 'limit', 'min', down)),
    ...(limits?.upper === undefined ? [] : level(limits.upper, 'limit', 'max', down)),
    ...(target === undefined ? [] : level(target, 'planned', 'target', down)),
  ];
  const path = history.slice(1).map((item, index) => {
    const previous = history[index] ?? item;
    return node('line', {
      x1: across(at(previous)),
      y1: down(previous.value),
      x2: across(at(item)),
      y2: down(item.value),
      class: 'narrow',
    });
  });
  const dates = [
    node(
      'text',
      {
        x: across(LEFT),
        y: HEIGHT - 8,
        'text-anchor': days === 0 ? 'start' : 'middle',
        class: 'small',
      },
      showShortDay(first.date, language),
    ),
    ...(days === 0
      ? []
      : [
          node(
            'text',
            { x: '100%', y: HEIGHT - 8, 'text-anchor': 'end', class: 'small' },
            showShortDay(last.date, language),
          ),
        ]),
  ];
  const [low, high] = range;
  const cut =
    low > 0 || high < 0
      ? [node('path', { d: `M6 ${BOTTOM} v6 l-5 4 l10 4 l-5 4 v6`, class: 'cut' })]
      : [];
  const title = wordsOf(language).measure.spec.drawing({
    name: spec.name,
    count: history.length,
    read: first.kind === 'read',
    from: first.date,
    to: last.date,
    unit: spec.unit,
  });
  const unit = node('text', { x: '0%', y: 10, class: 'small' }, spec.unit);
  return fluidDrawing(HEIGHT, title, [
    unit,
    ...scale,
    ...lines,
    ...path,
    ...history.flatMap((item) => point(item, at(item), down)),
    ...cut,
    ...dates,
  ]);
}

function level(value: number, line: string, name: string, down: Scale): SvgNode[] {
  return [
    node('line', { x1: '0%', x2: '100%', y1: down(value), y2: down(value), class: line }),
    node('text', { x: '100%', y: down(value) - 4, 'text-anchor': 'end', class: 'small' }, name),
  ];
}

function point(item: SpecValue, percent: number, down: Scale): SvgNode[] {
  const x = across(percent);
  const open = item.state === 'as-found' || item.state === 'before';
  const dot = node('circle', { cx: x, cy: down(item.value), r: 4, class: open ? 'open' : 'ink' });
  if (item.U === undefined) return [dot];
  const [low, high] = [down(item.value - item.U), down(item.value + item.U)];
  return [
    node('line', {
      x1: x,
      x2: x,
      y1: high,
      y2: low,
      class: item.kind === 'read' ? 'wide' : 'narrow',
    }),
    dot,
  ];
}

function decimalsOfStep(ticks: readonly number[]): number {
  const [first = 0, second = 1] = ticks;
  return Math.max(0, -Math.floor(Math.log10(Math.abs(second - first)) + 1e-9));
}
