import { edge, fine, tint } from '../ink.ts';
import { line, outline } from '../shape.ts';
import { numbersFrom } from '../sheet.ts';
import { type Place, slant } from './slant.ts';

const FLOOR = 420;
/** Inner faces: back of the shelves on the right side, their fronts, and the ceiling. */
const [BACK, FRONTS, CEILING] = [1660, 1400, 1980];
const COVERS = [
  '#7b3f3a',
  '#3f5f7f',
  '#6b7a4a',
  '#c09a52',
  '#54474f',
  '#e4d9b8',
  '#88603f',
  '#4b6f6a',
] as const;

/** What shows through the side door: floor, shelves on the far side, the reader's seat. */
export function interior(): string {
  return floor() + farWall() + shelves() + seat();
}

function face(fill: string, ...places: Place[]): string {
  return edge(outline(...places.map(slant)), fill);
}

function floor(): string {
  const boards = [300, 600, 900, 1200]
    .map((y) => line(slant([-400, y, FLOOR]), slant([3200, y, FLOOR])))
    .join('');
  return (
    face('#b39a72', [-400, 0, FLOOR], [3200, 0, FLOOR], [3200, BACK, FLOOR], [-400, BACK, FLOOR]) +
    fine(boards)
  );
}

function farWall(): string {
  return (
    face(
      '#d9cfae',
      [-400, BACK, FLOOR],
      [3200, BACK, FLOOR],
      [3200, BACK, CEILING],
      [-400, BACK, CEILING],
    ) +
    face(
      '#efe4c2',
      [-400, 0, CEILING],
      [3200, 0, CEILING],
      [3200, BACK, CEILING],
      [-400, BACK, CEILING],
    )
  );
}

/** Four boards of books on the right side. */
function shelves(): string {
  return (
    [500, 840, 1180, 1520].map((z) => shelf(z)).join('') +
    [300, 1180, 2060]
      .map((x) =>
        face(
          tint.wood,
          [x, FRONTS, FLOOR],
          [x + 30, FRONTS, FLOOR],
          [x + 30, FRONTS, 1880],
          [x, FRONTS, 1880],
        ),
      )
      .join('')
  );
}

function shelf(z: number): string {
  const next = numbersFrom(`shelf ${z}`);
  let x = 300;
  let books = '';
  while (x < 2040) {
    const width = 46 + Math.round(next() * 50);
    const height = 200 + Math.round(next() * 80);
    const cover = COVERS[Math.floor(next() * COVERS.length)] ?? COVERS[0];
    books += fine(
      outline(
        ...(
          [
            [x, FRONTS, z],
            [x + width, FRONTS, z],
            [x + width, FRONTS, z + height],
            [x, FRONTS, z + height],
          ] as const
        ).map((place) => slant(place)),
      ),
      cover,
    );
    x += width;
  }
  const board = face(
    tint.wood,
    [280, FRONTS - 20, z - 44],
    [2090, FRONTS - 20, z - 44],
    [2090, FRONTS - 20, z + 24],
    [280, FRONTS - 20, z + 24],
  );
  return books + board;
}

/** Green cushion and oak back, facing the door. */
function seat(): string {
  const [left, right, near, far] = [1000, 1450, 560, 1000];
  const cushion =
    face('#6f8f68', [left, near, 820], [right, near, 820], [right, far, 820], [left, far, 820]) +
    face('#5d7d58', [left, near, 720], [right, near, 720], [right, near, 820], [left, near, 820]) +
    face('#54714f', [left, near, 720], [left, far, 720], [left, far, 820], [left, near, 820]);
  const back =
    face(
      tint.woodDark,
      [right - 60, near, 820],
      [right, near, 820],
      [right + 90, near, 1420],
      [right + 30, near, 1420],
    ) +
    face(
      tint.wood,
      [right - 60, near, 820],
      [right - 60, far, 820],
      [right + 30, far, 1420],
      [right + 30, near, 1420],
    );
  const leg = (x: number, y: number): string =>
    edge(line(slant([x, y, FLOOR]), slant([x, y, 720])));
  return (
    leg(left + 40, far) +
    leg(right - 40, far) +
    leg(left + 40, near) +
    leg(right - 40, near) +
    back +
    cushion
  );
}
