import type { Project } from '../book/types.ts';
import { node, type SvgNode } from '../draw/svg.ts';
import type { Lettering } from './lettering.ts';

/** Size of a preview card in pixels, as link previews want it. */
export const CARD = { width: 1200, height: 630 } as const;

/** What a card says. */
export interface Card {
  /** Small line above: the machine. */
  readonly over: string;
  readonly title: string;
  /** The one number, large. */
  readonly value?: string;
  /** Lines below: before and after, verdict, day; the first may run on where no number stands. */
  readonly lines: readonly string[];
  /** A derived photo that stands beside the words. */
  readonly photo?: string;
  /** Fields of the title block. */
  readonly block: readonly (readonly [name: string, value: string])[];
}

/** Where a card's photo stands. */
export const PHOTO = { left: 744, top: 80, width: 376, height: 392 } as const;

/** The machine, as a card names it. */
export function machineOf({ info: { machine } }: Project): string {
  return `${machine.year} ${machine.maker} ${machine.model}`;
}

const INK = '#17191c';
const SOFT = '#50545b';
const PAPER = '#f7f5ee';
const M = 36;

/** A preview card as a small drawing sheet: frame, title, one number, title block. */
export function drawCard(card: Card, lettering: Lettering): SvgNode {
  const { width, height } = CARD;
  const inner = card.photo === undefined ? width - 2 * M - 88 : PHOTO.left - M - 80;
  const titleSize = card.value === undefined && card.photo === undefined ? 84 : 58;
  const title = lettering.wrap(
    card.title,
    inner,
    titleSize,
    card.value === undefined ? 3 : 2,
    'bold',
  );
  const first = 118 + Math.max(58, titleSize * 0.92);
  const titleNodes = title.map((line, index) =>
    lettering.line(line, M + 44, first + index * titleSize * 1.12, {
      size: titleSize,
      fill: INK,
      weight: 'bold',
    }),
  );
  const afterTitle = first + (title.length - 1) * titleSize * 1.12;
  const valueSize = card.value === undefined ? 0 : fitted(card.value, inner, 108, lettering);
  const value =
    card.value === undefined
      ? []
      : [
          lettering.line(card.value, M + 44, afterTitle + 44 + valueSize * 0.86, {
            size: valueSize,
            fill: INK,
          }),
        ];
  const linesTop = afterTitle + (card.value === undefined ? 60 : 100 + valueSize * 0.9);
  const most = card.value === undefined ? Math.max(1, 4 - title.length) : 1;
  const lines = card.lines
    .slice(0, 2)
    .flatMap((line, index) => lettering.wrap(line, inner, 30, index === 0 ? most : 1))
    .map((line, index) =>
      lettering.line(line, M + 44, linesTop + index * 40, { size: 30, fill: SOFT }),
    );
  return node(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: `0 0 ${width} ${height}` },
    node('rect', { width, height, fill: PAPER }),
    node('rect', {
      x: 18,
      y: 18,
      width: width - 36,
      height: height - 36,
      fill: 'none',
      stroke: INK,
      'stroke-width': 1.5,
    }),
    node('rect', {
      x: M,
      y: M,
      width: width - 2 * M,
      height: height - 2 * M,
      fill: 'none',
      stroke: INK,
      'stroke-width': 4,
    }),
    lettering.line(lettering.wrap(card.over, inner, 30, 1)[0] ?? '', M + 44, 104, {
      size: 30,
      fill: SOFT,
    }),
    ...(card.photo === undefined ? [] : [photoFrame()]),
    ...titleNodes,
    ...value,
    ...lines,
    ...block(card.block, lettering),
  );
}

function photoFrame(): SvgNode {
  const { left, top, width, height } = PHOTO;
  const lines = { fill: 'none', stroke: INK, 'stroke-width': 2 };
  return node('rect', { x: left - 1, y: top - 1, width: width + 2, height: height + 2, ...lines });
}

function fitted(text: string, width: number, size: number, lettering: Lettering): number {
  return Math.min(size, (size * width) / lettering.width(text, size));
}

function block(fields: Card['block'], lettering: Lettering): SvgNode[] {
  const top = CARD.height - M - 78;
  const cell = (CARD.width - 2 * M) / fields.length;
  const line = node('path', {
    d: `M${M} ${top}H${CARD.width - M}`,
    stroke: INK,
    'stroke-width': 4,
  });
  const cells = fields.flatMap(([name, value], index) => {
    const x = M + index * cell;
    return [
      node('path', { d: `M${x} ${top}V${CARD.height - M}`, stroke: INK, 'stroke-width': 2 }),
      lettering.line(name, x + 16, top + 28, { size: 19, fill: SOFT }),
      lettering.line(lettering.wrap(value, cell - 28, 27, 1, 'bold')[0] ?? '', x + 16, top + 60, {
        size: 27,
        fill: INK,
        weight: 'bold',
      }),
    ];
  });
  return [line, ...cells];
}
