import type { Point } from './shape.ts';

/** Flat colours of the drawings; names say what they stand for. */
export const tint = {
  paper: '#f3ecdc',
  shade: '#ddd1b8',
  ink: '#242c33',
  steel: '#c6cfd3',
  steelDark: '#9eabb1',
  steelLight: '#e1e6e6',
  iron: '#a9b3ac',
  ironDark: '#848f8a',
  ironLight: '#c5ccc4',
  brass: '#d9b768',
  copper: '#c98a5b',
  rubber: '#4b5157',
  glass: '#cfe3e6',
  wood: '#dcbd8d',
  woodDark: '#bd9461',
  green: '#86a487',
  greenDark: '#5f8267',
  cream: '#f1e2b6',
  rust: '#b96b42',
  red: '#b5473a',
  blue: '#39689c',
  blueLight: '#a9c4dc',
  leather: '#a5694a',
  dust: '#ebe2cc',
} as const;

/** Line widths of the set, 1:2 as ISO 128-2 has it, in pixels at full size. */
export const WIDE = 6;
export const NARROW = 3;

/** Visible edges: wide line, filled when a colour is given. */
export function edge(d: string, fill = 'none'): string {
  return stroked(d, fill, WIDE);
}

/** Lesser edges, and everything that only explains: narrow line. */
export function fine(d: string, fill = 'none'): string {
  return stroked(d, fill, NARROW);
}

/** A flat colour without a line. */
export function flat(d: string, fill: string, opacity = 1): string {
  return `<path d="${d}" fill="${fill}" fill-rule="evenodd"${opacity === 1 ? '' : ` fill-opacity="${opacity}"`}/>`;
}

/** Darkens what is already drawn: the side turned from the light, or a shadow on the ground. */
export function shade(d: string, opacity = 0.16): string {
  return flat(d, tint.ink, opacity);
}

/** Lightens what is already drawn: the side turned to the light, which falls from the upper left. */
export function gleam(d: string, opacity = 0.45): string {
  return flat(d, '#ffffff', opacity);
}

/** Edges behind something: dashed narrow line. */
export function hidden(d: string): string {
  return dashed(d, '18 10');
}

/** Axes and middles: long dash, dot. */
export function axis(d: string): string {
  return dashed(d, '40 9 5 9');
}

/** Where something stood before, or may stand: long dash, two dots. */
export function ghost(d: string): string {
  return dashed(d, '40 9 5 9 5 9');
}

/** A line of another colour or width, for blue dye, wires, water and the like. */
export function coloured(d: string, colour: string, width = NARROW): string {
  return `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${width}"/>`;
}

/** A cut face: colour, hatching at 45°, wide edge. Neighbouring parts lean the other way. */
export function cut(d: string, fill: string, lean: 'right' | 'left' = 'right'): string {
  return `${flat(d, fill)}<path d="${d}" fill="url(#hatch-${lean})" fill-rule="evenodd" stroke="${tint.ink}" stroke-width="${WIDE}"/>`;
}

/** Marks moved, and where asked turned (degrees) or mirrored left to right. */
export function moved([x, y]: Point, marks: string, { turn = 0, mirror = false } = {}): string {
  const more = `${turn === 0 ? '' : ` rotate(${turn})`}${mirror ? ' scale(-1 1)' : ''}`;
  return `<g transform="translate(${x} ${y})${more}">${marks}</g>`;
}

/** Marks drawn in other units (often millimetres); line widths stay those of the sheet. */
export function scaled(origin: Point, scale: number, marks: string): string {
  return `<g transform="translate(${origin.join(' ')}) scale(${scale})">${marks}</g>`;
}

/** Marks seen through an outline; `name` must be used once only in a sheet. */
export function within(d: string, name: string, marks: string): string {
  return `<clipPath id="${name}"><path d="${d}"/></clipPath><g clip-path="url(#${name})">${marks}</g>`;
}

function stroked(d: string, fill: string, width: number): string {
  return `<path d="${d}" fill="${fill}" fill-rule="evenodd" stroke="${tint.ink}" stroke-width="${width}"/>`;
}

function dashed(d: string, dashes: string): string {
  return `<path d="${d}" fill="none" stroke="${tint.ink}" stroke-width="${NARROW}" stroke-dasharray="${dashes}" stroke-linecap="butt"/>`;
}
