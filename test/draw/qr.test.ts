import { create } from 'qrcode';
import { describe, expect, test } from 'vitest';
import { drawQr } from '../../src/draw/qr.ts';
import { type SvgNode, writeSvg } from '../../src/draw/svg.ts';

const ADDRESSES = [
  'https://shed.example/',
  'https://shed.example/press/specs/ram-play/',
  `https://shed.example/${'a-long-way/'.repeat(20)}`,
];

/** The drawing put on a grid again: every unit square that the dark path covers. */
function gridOf(root: SvgNode): boolean[][] {
  const size = Number(`${root.attributes.viewBox}`.split(' ')[3]);
  const grid = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  const [, dark] = root.children as readonly SvgNode[];
  const path = `${dark?.attributes.d}`;
  const rows = [...path.matchAll(/M0 (\d+)\.5((?:m\d+ 0h\d+)*)/g)];
  expect(rows.map(([row]) => row).join('')).toBe(path);
  for (const [, y, runs = ''] of rows) {
    let x = 0;
    for (const [, gap, length] of runs.matchAll(/m(\d+) 0h(\d+)/g)) {
      x += Number(gap);
      for (const end = x + Number(length); x < end; x++) {
        const row = grid[Number(y)] as boolean[];
        expect(row[x]).toBe(false);
        row[x] = true;
      }
    }
  }
  return grid;
}

const FINDER = ['#######', '#.....#', '#.###.#', '#.###.#', '#.###.#', '#.....#', '#######'];

describe.each(ADDRESSES)('the QR code of %s', (address) => {
  const root = drawQr(address, `QR code of ${address}`);
  const grid = gridOf(root);
  const size = grid.length - 8;
  const at = (x: number, y: number) => grid[y + 4]?.[x + 4];

  test('has the modules of the code, no more and no less', () => {
    const { modules } = create(address, { errorCorrectionLevel: 'M' });
    expect(size).toBe(modules.size);
    for (let y = 0; y < size; y++)
      for (let x = 0; x < size; x++) expect(at(x, y), `${x} ${y}`).toBe(modules.get(y, x) === 1);
  });

  test('has a size that ISO/IEC 18004 knows: 21 modules and 4 more for each version', () => {
    expect((size - 17) % 4).toBe(0);
    expect(size).toBeGreaterThanOrEqual(21);
  });

  test('has a quiet zone of four modules all round', () => {
    for (const [y, row] of grid.entries())
      for (const [x, dark] of row.entries())
        if (Math.min(x, y, grid.length - 1 - x, grid.length - 1 - y) < 4) expect(dark).toBe(false);
  });

  test('has its three finder patterns with their light borders, and none in the fourth corner', () => {
    const corner = (left: number, top: number) =>
      Array.from({ length: 7 }, (_, y) =>
        Array.from({ length: 7 }, (_, x) => (at(left + x, top + y) ? '#' : '.')).join(''),
      );
    expect(corner(0, 0)).toEqual(FINDER);
    expect(corner(size - 7, 0)).toEqual(FINDER);
    expect(corner(0, size - 7)).toEqual(FINDER);
    expect(corner(size - 7, size - 7)).not.toEqual(FINDER);
    for (let step = 0; step < 8; step++)
      expect([at(7, step), at(step, 7), at(size - 8, step), at(7, size - 1 - step)]).toEqual(
        Array(4).fill(false),
      );
  });

  test('has timing patterns that alternate between the finders, and the dark module', () => {
    for (let step = 8; step < size - 8; step++)
      expect([at(step, 6), at(6, step)]).toEqual(Array(2).fill(step % 2 === 0));
    expect(at(8, size - 8)).toBe(true);
  });

  test('says M in both places of its format information', () => {
    // ISO/IEC 18004 7.9: level M is 00, masked by the first two bits, 10, of 101010000010010.
    expect([at(0, 8), at(1, 8)]).toEqual([true, false]);
    expect([at(8, size - 1), at(8, size - 2)]).toEqual([true, false]);
  });
});

test('the drawing is dark on light whatever the colours around it, and says what it is', () => {
  const address = 'https://shed.example/?a=1&b=2';
  const written = writeSvg(drawQr(address, `QR code of ${address}`));
  expect(written).toContain('fill="#fff"');
  expect(written).toContain('stroke="#000"');
  expect(written).toContain('role="img" aria-label="QR code of https://shed.example/?a=1&amp;b=2"');
});
