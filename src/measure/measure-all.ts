import type { Instrument, Reading, Spec } from '../model/kinds.ts';
import type { QuantityKind } from '../units/kinds.ts';
import { kindOf } from '../units/unit.ts';
import { type CrossChecks, intervalToShow } from './cross-check.ts';
import { type Measured, measure } from './reading.ts';
import { isWorkedOut, type Recipe, type RecipeMistake, recipeOf } from './recipe.ts';
import { type Impossible, type ValuesBySpec, workOutAll } from './worked.ts';

/** What the measured side of a project is worked out from; readings in order of date. */
export interface MeasureInput {
  readonly specs: readonly Spec[];
  readonly instruments: readonly Instrument[];
  readonly readings: readonly Reading[];
  /** Drawn intervals, as far as they are known. */
  readonly checks: CrossChecks;
}

/** Every value of a project, read or worked out, and what stood in the way. */
export interface MeasuredProject {
  readonly specs: readonly Spec[];
  readonly instruments: readonly Instrument[];
  readonly readings: readonly Measured[];
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly values: ValuesBySpec;
  readonly mistakes: ReadonlyMap<string, readonly RecipeMistake[]>;
  readonly impossible: readonly Impossible[];
}

/** Works out all readings and derived specs. Records whose units don't fit are left out; the check has named them. */
export function measureAll(input: MeasureInput): MeasuredProject {
  const specs = new Map(input.specs.filter(unitsFit).map((spec) => [spec.id, spec]));
  const instruments = new Map(
    input.instruments.filter(instrumentFits).map((item) => [item.id, item]),
  );
  const readings = input.readings.flatMap((reading) => {
    const spec = specs.get(reading.spec);
    if (spec === undefined || kindOf(reading.unit) !== spec.quantity || nothingCounts(reading))
      return [];
    const instrument = instruments.get(reading.instrument);
    return [
      measure(reading, spec, instrument?.quantity === spec.quantity ? instrument : undefined),
    ];
  });

  const recipes = new Map<string, Recipe>();
  const mistakes = new Map<string, readonly RecipeMistake[]>();
  for (const spec of specs.values()) {
    if (!isWorkedOut(spec)) continue;
    const recipe = recipeOf(spec, specs);
    if ('ready' in recipe) recipes.set(spec.id, recipe);
    else mistakes.set(spec.id, recipe);
  }
  const read = Map.groupBy(readings, ({ reading }) => reading.spec);
  const { values, impossible } = workOutAll([...recipes.values()], read, (worked) =>
    intervalToShow(worked, input.checks),
  );
  return {
    specs: [...specs.values()],
    instruments: [...instruments.values()],
    readings,
    recipes,
    values,
    mistakes,
    impossible,
  };
}

function unitsFit({ quantity, unit, min, max, nominal, target }: Spec): boolean {
  return areUnitsOf(quantity, [unit, ...[min, max, nominal, target].map((limit) => limit?.unit)]);
}

function instrumentFits({ quantity, step, statedError, certificateU }: Instrument): boolean {
  return areUnitsOf(quantity, [step?.unit, statedError?.unit, certificateU?.unit]);
}

function areUnitsOf(quantity: QuantityKind, units: readonly (string | undefined)[]): boolean {
  return units.every((unit) => unit === undefined || kindOf(unit) === quantity);
}

function nothingCounts({ values, excluded = [] }: Reading): boolean {
  return values.every((_, index) => excluded.includes(index + 1));
}
