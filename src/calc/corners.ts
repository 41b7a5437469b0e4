import type { CalculationInput, Requirement } from './calculation.ts';

const corner = (what: string): CalculationInput => ({
  what: `load of the ${what} wheel`,
  quantity: 'mass',
  unit: 'kg',
  least: 0,
});

/** Loads of the four wheels, left and right as the driver sees them. A lifted wheel carries nothing and is a load of 0. */
export const corners = {
  W_LF: corner('left front'),
  W_RF: corner('right front'),
  W_LR: corner('left rear'),
  W_RR: corner('right rear'),
} as const;

/** Whole load on the four wheels, as formulas write it. */
export const cornerSum = '(W_LF + W_RF + W_LR + W_RR)';

/** Without any load there is no share of it. */
export const someLoad: Requirement = {
  holds: `${cornerSum} > 0`,
  otherwise: 'no wheel carries any load',
};

/** How wheel loads have to be taken, for every calculation over them. */
export const cornerAssumptions: readonly string[] = [
  'the floor under the four scales is level, tyres are at pressure and the suspension has settled',
  'the vehicle is loaded as it will be used: fuel, driver, tools',
];
