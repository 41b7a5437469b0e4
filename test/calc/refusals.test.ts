import { describe, expect, test } from 'vitest';
import type { Calculation } from '../../src/calc/calculation.ts';
import { cgAcross } from '../../src/calc/cg-across.ts';
import { cornerShare } from '../../src/calc/corner-share.ts';
import { crossWeight } from '../../src/calc/cross-weight.ts';
import { dampingRatio } from '../../src/calc/damping-ratio.ts';
import { placeDeviation } from '../../src/calc/place-deviation.ts';
import { sheetLoss } from '../../src/calc/sheet-loss.ts';
import { sideShare } from '../../src/calc/side-share.ts';
import { squarenessAngle } from '../../src/calc/squareness-angle.ts';
import { impossibleInput, makeReady } from '../../src/calc/work-out.ts';

/** What a calculation gives for values in base units, or why it gives nothing. */
function workOut(calculation: Calculation, values: readonly number[]): number | string {
  const named = Object.keys(calculation.inputs).length;
  const ready = makeReady(calculation, values.length - named);
  return impossibleInput(ready, values) ?? ready.value(values);
}

describe('sheet-loss', () => {
  test('is whole where nothing is left and below zero where the sheet is thicker than its nominal', () => {
    expect(workOut(sheetLoss, [0.0012, 0])).toBe(1);
    expect(workOut(sheetLoss, [0.001, 0.00105])).toBeCloseTo(-0.05, 12);
  });

  test('refuses a thickness below zero', () => {
    expect(workOut(sheetLoss, [0.0012, -0.0001])).toBe('thickness measured is below 0');
  });
});

describe('wheel loads', () => {
  test('may be zero at a lifted wheel, and not at all four', () => {
    expect(workOut(crossWeight, [300, 0, 0, 300])).toBe(0);
    expect(workOut(crossWeight, [0, 0, 0, 0])).toBe('no wheel carries any load');
    expect(workOut(sideShare, [0, 0, 0, 0])).toBe('no wheel carries any load');
    expect(workOut(cgAcross, [0, 0, 0, 0, 1.5, 1.5])).toBe('no wheel carries any load');
  });

  test('are refused below zero', () => {
    expect(workOut(crossWeight, [300, -1, 200, 300])).toBe(
      'load of the right front wheel is below 0',
    );
    expect(workOut(cornerShare, [300, 200, -1, 300])).toBe('load of another wheel is below 0');
  });

  test('put the centre of gravity to the right where the right side is the heavier', () => {
    expect(workOut(cgAcross, [100, 300, 100, 300, 1.6, 1.6])).toBeCloseTo(0.4, 12);
    expect(workOut(cgAcross, [300, 100, 300, 100, 1.6, 1.6])).toBeCloseTo(-0.4, 12);
  });
});

describe('squareness-angle', () => {
  const square = Math.hypot(2.4, 1);

  test('is zero for equal diagonals and turns its sign with the longer one', () => {
    expect(workOut(squarenessAngle, [2.4, 1, square, square])).toBe(0);
    const one = workOut(squarenessAngle, [2.4, 1, 2.604, 2.596]) as number;
    expect(one).toBeGreaterThan(0);
    expect(workOut(squarenessAngle, [2.4, 1, 2.596, 2.604])).toBe(-one);
  });

  test('refuses diagonals that sides so long cannot have', () => {
    expect(workOut(squarenessAngle, [1, 1, 2.1, 0.3])).toBe(
      'the diagonals differ by more than these sides allow',
    );
  });

  test('refuses diagonals taken between other points than the sides', () => {
    expect(workOut(squarenessAngle, [2.4, 1, square * 1.02, square * 1.02])).toBe(
      'the diagonals do not fit the sides: one of the four was taken between other points',
    );
    expect(workOut(squarenessAngle, [2.4, 1, square * 1.005, square * 1.005])).toBe(0);
  });
});

test('place-deviation is zero, not no number, where all places are alike', () => {
  expect(workOut(placeDeviation, [0.001, 0.001, 0.001])).toBe(0);
});

test('damping-ratio is zero without a damper and one at the critical damping', () => {
  expect(workOut(dampingRatio, [0, 20_000, 320])).toBe(0);
  expect(workOut(dampingRatio, [2 * Math.sqrt(20_000 * 320), 20_000, 320])).toBe(1);
  expect(workOut(dampingRatio, [-1, 20_000, 320])).toBe('damping at the wheel is below 0');
});
