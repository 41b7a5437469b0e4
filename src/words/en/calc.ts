import type { CalculationTexts } from '../calc-texts.ts';

/** Texts of calculations by name. None in English, which stands with each calculation in `src/calc`. */
export const calc: Readonly<Record<string, CalculationTexts>> = {};
