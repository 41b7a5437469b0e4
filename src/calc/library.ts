import type { Calculation } from './calculation.ts';
import { cgHeightRaisedAxle } from './cg-height-raised-axle.ts';
import { placeLeast, placeMean } from './place-statistics.ts';

/** Every calculation that a spec may name, by name. */
export const library: ReadonlyMap<string, Calculation> = new Map(
  [placeMean, placeLeast, cgHeightRaisedAxle].map((calculation) => [calculation.name, calculation]),
);
