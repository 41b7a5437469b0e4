import type { Project } from '../book/types.ts';
import type { Lettering } from './lettering.ts';
import type { Weight } from './typeface.ts';

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

/** What a card is drawn with; a photo stands on it besides. */
export const COLOURS = { paper: '#f7f5ee', inks: ['#17191c', '#50545b'] } as const;

/** A line of text with its baseline at y. Inks are numbered as in `COLOURS`. */
export interface CardText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
  readonly ink: number;
}

/** Left, top, right and bottom of what is filled with the first ink. */
export type Bar = readonly [x0: number, y0: number, x1: number, y1: number];

/** A card with everything in its place. */
export interface CardDrawing {
  readonly bars: readonly Bar[];
  readonly texts: readonly CardText[];
}

/** Where a card's photo stands. */
export const PHOTO = { left: 744, top: 80, width: 376, height: 392 } as const;

/** The machine, as a card names it. */
export function machineOf({ info: { machine } }: Project): string {
  return `${machine.year} ${machine.maker} ${machine.model}`;
}

const M = 36;
const INK = 0;
const SOFT = 1;

/** A preview card as a small drawing sheet: frame, title, one number, title block. */
export function drawCard(card: Card, lettering: Lettering): CardDrawing {
  const { width, height } = CARD;
  const inner = card.photo === undefined ? width - 2 * M - 88 : PHOTO.left - M - 80;
  const x = M + 44;
  const most = card.value === undefined ? 3 : 2;
  const titleSize = card.value === undefined && card.photo === undefined ? 84 : 58;
  const title = lettering.wrap(card.title, inner, titleSize, most, 'bold');
  const first = 118 + Math.max(58, titleSize * 0.92);
  const afterTitle = first + (title.length - 1) * titleSize * 1.12;
  const valueSize = card.value === undefined ? 0 : fitted(card.value, inner, 108, lettering);
  const valueAt = { x, y: afterTitle + 44 + valueSize * 0.86, size: valueSize };
  const linesTop = afterTitle + (card.value === undefined ? 60 : 100 + valueSize * 0.9);
  const room = card.value === undefined ? Math.max(1, 4 - title.length) : 1;
  const lines = card.lines
    .slice(0, 2)
    .flatMap((line, index) => lettering.wrap(line, inner, 30, index === 0 ? room : 1));
  const over = lettering.wrap(card.over, inner, 30, 1)[0] ?? '';
  const block = drawBlock(card.block, lettering);
  return {
    bars: [
      ...frame([18, 18, width - 18, height - 18], 1.5),
      ...frame([M, M, width - M, height - M], 4),
      ...(card.photo === undefined ? [] : photoFrame()),
      ...block.bars,
    ],
    texts: [
      { text: over, x, y: 104, ...SMALL },
      ...title.map((text, index) => ({
        ...{ text, x, y: first + index * titleSize * 1.12 },
        ...{ size: titleSize, weight: 'bold' as const, ink: INK },
      })),
      ...(card.value === undefined
        ? []
        : [{ text: card.value, ...valueAt, weight: 'regular' as const, ink: INK }]),
      ...lines.map((text, index) => ({ text, x, y: linesTop + index * 40, ...SMALL })),
      ...block.texts,
    ],
  };
}

const SMALL = { size: 30, weight: 'regular', ink: SOFT } as const;

/** Four bars whose middle lines make a rectangle; none covers another. */
function frame([x0, y0, x1, y1]: Bar, thick: number): Bar[] {
  const half = thick / 2;
  return [
    [x0 - half, y0 - half, x1 + half, y0 + half],
    [x0 - half, y1 - half, x1 + half, y1 + half],
    [x0 - half, y0 + half, x0 + half, y1 - half],
    [x1 - half, y0 + half, x1 + half, y1 - half],
  ];
}

function photoFrame(): Bar[] {
  const { left, top, width, height } = PHOTO;
  return frame([left - 1, top - 1, left + width + 1, top + height + 1], 2);
}

function fitted(text: string, width: number, size: number, lettering: Lettering): number {
  return Math.min(size, (size * width) / lettering.width(text, size));
}

function drawBlock(fields: Card['block'], lettering: Lettering): CardDrawing {
  const [top, bottom] = [CARD.height - M - 78, CARD.height - M];
  const cell = (CARD.width - 2 * M) / fields.length;
  const cells = fields.map(([name, value], index) => ({ name, value, x: M + index * cell }));
  return {
    bars: [
      [M, top - 2, CARD.width - M, top + 2],
      ...cells.map(({ x }): Bar => [x - 1, top, x + 1, bottom]),
    ],
    texts: cells.flatMap(({ name, value, x }) => [
      { text: name, x: x + 16, y: top + 28, size: 19, weight: 'regular' as const, ink: SOFT },
      {
        ...{ text: lettering.wrap(value, cell - 28, 27, 1, 'bold')[0] ?? '', x: x + 16 },
        ...{ y: top + 60, size: 27, weight: 'bold' as const, ink: INK },
      },
    ]),
  };
}
