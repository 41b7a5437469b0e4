import type { QuantityKind } from '../units/kinds.ts';

/** One input of a calculation. */
export interface CalculationInput {
  /** What it is, in a few words for the page: `wheelbase`. */
  readonly what: string;
  readonly quantity: QuantityKind;
  /** Unit of the worked examples and of the page where the input is a constant. */
  readonly unit: string;
  /** Value when the builder names none, with its unit; an input without one must be given. */
  readonly otherwise?: string;
  /** Refused at or below this value, in base units of the quantity; 0 for lengths and masses that must be there. */
  readonly above?: number;
  /** Refused below this value, in base units. */
  readonly least?: number;
}

/** A worked example: published, or by an independent route. It is also the calculation's test. */
export interface WorkedExample {
  /** Where it was published, or `common practice, no source` for made-up numbers and plain arithmetic. */
  readonly source: string;
  /** Inputs with their units, `{ L: '2550 mm' }`; a list for an input of several. */
  readonly inputs: Readonly<Record<string, string | readonly string[]>>;
  /** Result with its unit. */
  readonly result: string;
  /** How far the result may be off, in the result's unit: half of the published last digit, or the rounding of a computed one. */
  readonly tolerance: number;
}

/** What must hold between inputs, or the calculation means nothing. */
export interface Requirement {
  /** A comparison over the inputs, in base units: `H < L`. */
  readonly holds: string;
  /** What is wrong when it does not, for the builder: `the rise is as large as the wheelbase`. */
  readonly otherwise: string;
}

/**
 * An engineering calculation: inputs with quantity kinds, a formula, where it was published, what it assumes, and worked examples.
 *
 * The formula works in coherent base units (m, kg, s, rad, Pa, N·m …) whatever units the readings were taken in.
 * It may use `+ - * / ^`, `sqrt abs sin cos tan asin acos atan exp log min max`, `pi` and `g_n` (standard gravity).
 */
export interface Calculation {
  /** Name in `specs.yaml`: lower-case words joined by hyphens. */
  readonly name: string;
  readonly title: string;
  readonly inputs: Readonly<Record<string, CalculationInput>>;
  /** The one input that takes a list of specs, if any; its values are `x1 … xn` in the formula. */
  readonly many?: CalculationInput & { readonly key: string; readonly atLeast: number };
  readonly result: { readonly quantity: QuantityKind; readonly unit: string };
  /** The formula, or a function that writes it for n values of the list. */
  readonly formula: string | ((n: number) => string);
  readonly requires?: readonly Requirement[];
  readonly source: string;
  readonly assumptions: readonly string[];
  /** What could go wrong if someone relied on it; shown with a note to have it checked by a qualified person. */
  readonly caution?: string;
  readonly examples: readonly WorkedExample[];
}
