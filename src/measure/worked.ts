import { once } from '../book/once.ts';
import { impossibleInput } from '../calc/work-out.ts';
import type { Day } from '../time/day.ts';
import { baseSlope, fromBaseUnit, toBaseUnit } from '../units/unit.ts';
import { type Propagated, propagate } from './propagate.ts';
import type { Measured } from './reading.ts';
import type { Recipe, RecipeInput } from './recipe.ts';
import { SpreadLater } from './spread-later.ts';
import { type Component, scaleComponents, type Uncertain } from './uncertain.ts';
import type { Interval, SpecState, ValueOnDay } from './value-on-day.ts';

/** A value of a spec on a day, read or worked out, in the spec's unit. */
export type SpecValue = Measured | Worked;

/** A value that was worked out of others on a day. */
export interface Worked extends ValueOnDay {
  readonly kind: 'worked';
  readonly recipe: Recipe;
  /** The value behind each input, in the order of the recipe; undefined for a constant. */
  readonly sources: readonly (SpecValue | undefined)[];
  /** Values and sources that went in, in base units. */
  readonly inputs: readonly Uncertain[];
  /** The result in base units, with the budget. */
  readonly base: Propagated;
}

/** A day on which a calculation means nothing, and why. */
export interface Impossible {
  readonly spec: string;
  readonly date: Day;
  readonly why: string;
}

/** Values of specs by id, each list in order of date. */
export type ValuesBySpec = ReadonlyMap<string, readonly SpecValue[]>;

/**
 * Works out all derived specs of a project, those that others need first. A spec in a ring, or with a recipe that can't be put together, has no values.
 * `intervalFor` gives the drawn interval of the latest value, in the spec's unit, where one is to be shown; earlier ones are not drawn.
 */
export function workOutAll(
  recipes: readonly Recipe[],
  read: ValuesBySpec,
  intervalFor: (worked: Worked) => Interval | undefined,
): { values: ValuesBySpec; impossible: readonly Impossible[] } {
  const values = new Map(read);
  const impossible: Impossible[] = [];
  const waiting = new Map(recipes.map((recipe) => [recipe.spec.id, recipe]));
  const workOut = (recipe: Recipe, trail: readonly string[]): void => {
    waiting.delete(recipe.spec.id);
    for (const input of recipe.inputs) {
      const needed = input.from === 'spec' ? waiting.get(input.spec) : undefined;
      if (needed && !trail.includes(needed.spec.id)) workOut(needed, [...trail, recipe.spec.id]);
    }
    const done = workOutOne(recipe, values);
    impossible.push(...done.impossible);
    done.values.at(-1)?.drawnBy(intervalFor);
    values.set(recipe.spec.id, done.values);
  };
  for (const recipe of recipes) if (waiting.has(recipe.spec.id)) workOut(recipe, []);
  return { values, impossible };
}

function workOutOne(
  recipe: Recipe,
  values: ReadonlyMap<string, readonly SpecValue[]>,
): { values: WorkedValue[]; impossible: Impossible[] } {
  const impossible: Impossible[] = [];
  const worked = occasionsOf(recipe, values).flatMap((occasion): WorkedValue[] => {
    const inputs = recipe.inputs.map((input, index) => valueInBase(input, occasion.sources[index]));
    const why = impossibleInput(recipe.ready, inputs);
    if (why === undefined) return [new WorkedValue(recipe, occasion, recipe.ready.value(inputs))];
    impossible.push({ spec: recipe.spec.id, date: occasion.date, why });
    return [];
  });
  return { values: worked, impossible };
}

/** A worked-out value whose uncertainty is worked out when somebody asks. */
class WorkedValue extends SpreadLater implements Worked {
  readonly kind = 'worked';
  readonly id: string;
  readonly date: Day;
  readonly state: SpecState;
  readonly unit: string;
  readonly value: number;
  readonly decimals: number;
  readonly recipe: Recipe;
  readonly sources: readonly (SpecValue | undefined)[];
  #inputs: readonly Uncertain[] | undefined;
  #base: Propagated | undefined;
  #interval: (() => Interval | undefined) | undefined;

  constructor(recipe: Recipe, { date, state, sources }: Occasion, inBaseUnit: number) {
    super();
    this.id = `on-${date}-${state}`;
    this.date = date;
    this.state = state;
    this.unit = recipe.spec.unit;
    this.value = fromBaseUnit(inBaseUnit, this.unit);
    this.decimals = threeDigits(this.value);
    this.recipe = recipe;
    this.sources = sources;
  }

  drawnBy(intervalFor: (worked: Worked) => Interval | undefined): void {
    this.#interval = once(() => intervalFor(this));
  }

  get inputs(): readonly Uncertain[] {
    this.#inputs ??= this.recipe.inputs.map((input, index) => inBase(input, this.sources[index]));
    return this.#inputs;
  }

  get base(): Propagated {
    this.#base ??= propagate(this.recipe.ready, this.inputs);
    return this.#base;
  }

  protected workOutComponents(): readonly Component[] {
    return scaleComponents(this.base.components, 1 / baseSlope(this.unit, this.value));
  }

  get interval(): Interval | undefined {
    return this.#interval?.();
  }
}

function valueInBase(input: RecipeInput, source: SpecValue | undefined): number {
  if (input.from === 'constant') return input.value.value;
  if (source === undefined) throw new Error(`this is our bug: no value for ${input.name}`);
  return toBaseUnit(source.value, source.unit);
}

function inBase(input: RecipeInput, source: SpecValue | undefined): Uncertain {
  if (input.from === 'constant') return input.value;
  if (source === undefined) throw new Error(`this is our bug: no value for ${input.name}`);
  return {
    value: toBaseUnit(source.value, source.unit),
    components: scaleComponents(source.components, baseSlope(source.unit, source.value)),
  };
}

/** Decimals that show three significant digits, for a result whose inputs all came without uncertainty. */
function threeDigits(value: number): number {
  return value === 0 ? 2 : Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
}

interface Occasion {
  readonly date: Day;
  readonly state: SpecState;
  readonly sources: readonly (SpecValue | undefined)[];
}

/**
 * Days on which a calculation can be worked out: every input that is not carried was read on that day and in one state,
 * and every carried one has an earlier value that still stands. With carried inputs and constants only, the newest day of any.
 */
function occasionsOf(
  recipe: Recipe,
  values: ReadonlyMap<string, readonly SpecValue[]>,
): Occasion[] {
  const specs = recipe.inputs.filter((input) => input.from === 'spec');
  const leading = specs.filter(({ carried }) => !carried);
  const drivers = leading.length > 0 ? leading : specs;
  const first = drivers[0];
  if (first === undefined) return [];

  const candidates =
    leading.length > 0
      ? (values.get(first.spec) ?? [])
      : drivers.flatMap(({ spec }) => values.get(spec) ?? []);
  const occasions = new Map<string, Occasion>();
  for (const { date, state } of [...candidates].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  )) {
    const sources = recipe.inputs.map((input) => {
      if (input.from === 'constant') return undefined;
      const all = values.get(input.spec) ?? [];
      return input.carried
        ? all.findLast((item) => item.date <= date)
        : all.findLast((item) => item.date === date && item.state === state);
    });
    const whole = recipe.inputs.every(
      (input, index) => input.from === 'constant' || sources[index] !== undefined,
    );
    if (whole) occasions.set(`${date} ${state}`, { date, state, sources });
  }
  return [...occasions.values()];
}

/** Specs that a spec is worked out of. */
export function inputSpecsOf(recipe: Recipe): readonly string[] {
  return [
    ...new Set(recipe.inputs.flatMap((input) => (input.from === 'spec' ? [input.spec] : []))),
  ];
}
