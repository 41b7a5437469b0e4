import type { DrawnCallout } from '../../src/draw/callouts.ts';

/**
 * Callouts as few as show every case: two numbers that must not cover one another, one in a corner, a level dimension near the left
 * side, a slanted one that goes from right to left, and one without a value.
 */
export const calledOut: readonly DrawnCallout[] = [
  { at: [0.4, 0.4] },
  { at: [0.44, 0.42] },
  { at: [0.98, 0.03] },
  { at: [0.05, 0.8], to: [0.3, 0.8], value: '806.0 ± 5.4 mm' },
  { at: [0.9, 0.6], to: [0.5, 0.75], value: '(769.4 ± 8.1 mm)' },
  { at: [0.9, 0.2], to: [0.9, 0.5] },
];
