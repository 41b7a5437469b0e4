import { edge, fine, flat, gleam, tint } from '../ink.ts';
import { box, line } from '../shape.ts';

/**
 * The bus from above, nose to the left, in millimetres: x = 0 over the front wheels' centres, y = 0 on the middle line
 * and growing to the left side, which lies at the bottom of the sheet.
 */
export const PLAN_OUTLINE =
  'M-760 -790Q-884 -600 -884 0Q-884 600 -760 790Q-720 860 -560 860H3200Q3400 860 3400 640V-640Q3400 -860 3200 -860H-560Q-720 -860 -760 -790Z';

/** From the middle line to the middle of a tyre. */
export const HALF_TRACK = 650;

/** The roof as a lid that lets what is below it shine through. */
export function roofPlan(colour: string, opacity: number): string {
  const windscreen = 'M-800 -620Q-850 0 -800 620L-560 560Q-600 0 -560 -560Z';
  return (
    flat(PLAN_OUTLINE, colour, opacity) +
    gleam(box([-420, -640], [3560, 160], 60), 0.3) +
    edge(PLAN_OUTLINE) +
    fine(windscreen, tint.glass) +
    fine(box([-470, -720], [3700, 1440], 160)) +
    fine(
      line([200, -720], [200, 720]) +
        line([1000, -720], [1000, 720]) +
        line([1800, -720], [1800, 720]) +
        line([2600, -720], [2600, 720]),
    )
  );
}

/** Where a tyre stands, seen through everything above it. */
export function tyrePlan(x: number, y: number): string {
  return box([x - 310, y - 85], [620, 170], 50);
}
