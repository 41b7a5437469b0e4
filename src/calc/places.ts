import type { Calculation } from './calculation.ts';

/** Readings at places of one panel, as the place calculations take them. */
export const places = {
  key: 'places',
  what: 'reading at a place',
  quantity: 'length',
  unit: 'mm',
  atLeast: 2,
} as const satisfies Calculation['many'];
