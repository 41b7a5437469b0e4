import { edge, fine, NARROW, tint } from './ink.ts';
import { lettering, letteringWidth } from './lettering.ts';
import { box, line, type Point } from './shape.ts';

export const SHEET_WIDTH = 2000;
export const SHEET_HEIGHT = 1500;
const MARGIN = 44;
const BLOCK_HEIGHT = 78;

export interface TitleBlock {
  readonly machine: string;
  readonly title: string;
  readonly day: string;
}

/** A whole drawing as an SVG document: paper, frame, marks, title block. */
export function sheet(marks: string, block: TitleBlock): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${SHEET_WIDTH}" height="${SHEET_HEIGHT}" viewBox="0 0 ${SHEET_WIDTH} ${SHEET_HEIGHT}">` +
    `<style>path{vector-effect:non-scaling-stroke;stroke-linecap:round;stroke-linejoin:round}.letters path{vector-effect:none}</style>` +
    `<defs>${hatch('right', 45)}${hatch('left', -45)}${hatch('coarse', 45, 4)}</defs>${paper(block.title)}${marks}${frame()}${titleBlock(block)}</svg>`
  );
}

/** `reach` is how many times the lines stand further apart, for marks that are drawn at that much less. */
function hatch(name: string, degrees: number, reach = 1): string {
  const gap = 26 * reach;
  return (
    `<pattern id="hatch-${name}" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" patternTransform="rotate(${degrees})">` +
    `<path d="M${gap / 2} -2V${gap + 2}" stroke="${tint.ink}" stroke-width="${NARROW}" style="stroke-linecap:butt"/></pattern>`
  );
}

/** Paper with fibres; the title seeds them, so that every sheet is a little different and always the same. */
function paper(seed: string): string {
  const next = numbersFrom(seed);
  const fibre = (): string => {
    const [x, y] = [next() * SHEET_WIDTH, next() * SHEET_HEIGHT];
    const bend = (): number => Math.round((next() - 0.5) * 70);
    return `M${Math.round(x)} ${Math.round(y)}q${bend()} ${bend()} ${bend()} ${bend()}`;
  };
  const fibres = (count: number): string => Array.from({ length: count }, fibre).join('');
  const ground = `<path d="${box([0, 0], [SHEET_WIDTH, SHEET_HEIGHT])}" fill="${tint.paper}"/>`;
  const dark = `<path d="${fibres(150)}" fill="none" stroke="#8a7852" stroke-width="2" stroke-opacity=".1"/>`;
  const light = `<path d="${fibres(150)}" fill="none" stroke="#fffdf4" stroke-width="3" stroke-opacity=".5"/>`;
  return ground + dark + light;
}

function frame(): string {
  const [right, bottom] = [SHEET_WIDTH - MARGIN, SHEET_HEIGHT - MARGIN];
  const [middleX, middleY] = [SHEET_WIDTH / 2, SHEET_HEIGHT / 2];
  const centring =
    line([middleX, 12], [middleX, MARGIN + 14]) +
    line([middleX, SHEET_HEIGHT - 12], [middleX, bottom - 14]) +
    line([12, middleY], [MARGIN + 14, middleY]) +
    line([SHEET_WIDTH - 12, middleY], [right - 14, middleY]);
  return edge(box([MARGIN, MARGIN], [right - MARGIN, bottom - MARGIN]) + centring);
}

/** One row of fields in the lower right corner, after ISO 7200: whose, what, when. */
function titleBlock({ machine, title, day }: TitleBlock): string {
  const fields = [machine.toUpperCase(), title, day];
  const sizes = [28, 36, 28];
  const widths = fields.map((text, index) => letteringWidth(text, sizes[index]) + 60);
  const top = SHEET_HEIGHT - MARGIN - BLOCK_HEIGHT;
  let x = SHEET_WIDTH - MARGIN - widths.reduce((sum, width) => sum + width, 0);
  let marks = '';
  for (const [index, text] of fields.entries()) {
    const [width = 0, size = 28] = [widths[index], sizes[index]];
    const at: Point = [x + 30, top + BLOCK_HEIGHT / 2 + size / 2];
    marks +=
      fine(box([x, top], [width, BLOCK_HEIGHT]), tint.paper) +
      lettering(text, at, { size, halo: 'none' });
    x += width;
  }
  return marks;
}

/** Numbers from 0 to 1 that depend on the seed alone (a linear congruential generator, constants of C++'s minstd_rand). */
export function numbersFrom(seed: string): () => number {
  let state = [...seed].reduce(
    (sum, sign) => (sum * 31 + (sign.codePointAt(0) ?? 0)) % 2_147_483_647,
    7,
  );
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
