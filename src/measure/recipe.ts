import type { Calculation, CalculationInput } from '../calc/calculation.ts';
import { library } from '../calc/library.ts';
import { makeReady, type ReadyCalculation, readyFormula } from '../calc/work-out.ts';
import type { Spec } from '../model/kinds.ts';
import { nearest, suggest } from '../read/nearest.ts';
import type { QuantityKind } from '../units/kinds.ts';
import { baseSlope, kindOf, toBaseUnit, unitsOf } from '../units/unit.ts';
import { readConstant } from './constant.ts';
import type { Uncertain } from './uncertain.ts';

/** Where one value of a calculation comes from. */
export type RecipeInput =
  | {
      readonly from: 'spec';
      readonly name: string;
      readonly spec: string;
      readonly carried: boolean;
    }
  | {
      readonly from: 'constant';
      readonly name: string;
      readonly text: string;
      readonly unit: string;
      readonly value: Uncertain;
    };

/** How a spec is worked out: a calculation made ready, and what goes into it, in the order of its names. */
export interface Recipe {
  readonly spec: Spec;
  /** The library's calculation, or undefined for a formula of the spec's own. */
  readonly calculation: Calculation | undefined;
  readonly ready: ReadyCalculation;
  readonly inputs: readonly RecipeInput[];
}

/** What is wrong with a spec's calculation, and where in its record. */
export interface RecipeMistake {
  readonly path: readonly (string | number)[];
  readonly wrong: string;
  readonly fix?: string | undefined;
}

/** Whether a spec is worked out of others. */
export function isWorkedOut({ calc, formula }: Spec): boolean {
  return calc !== undefined || formula !== undefined;
}

/** Puts a spec's calculation together, or says all that is wrong with it. */
export function recipeOf(
  spec: Spec,
  specs: ReadonlyMap<string, Spec>,
): Recipe | readonly RecipeMistake[] {
  if (spec.calc !== undefined && spec.formula !== undefined)
    return [{ path: ['formula'], wrong: 'stands beside calc', fix: 'keep one of the two' }];
  const given = Object.entries(spec.inputs ?? {}).flatMap(([name, value]) =>
    [value].flat().map((text) => ({ name, text })),
  );
  if (spec.formula !== undefined) return withADay(ownFormula(spec, specs, given));

  const calculation = library.get(spec.calc ?? '');
  if (calculation === undefined)
    return [
      {
        path: ['calc'],
        wrong: `there is no calculation "${spec.calc}"`,
        fix: suggest(spec.calc ?? '', [...library.keys()]),
      },
    ];
  if (calculation.result.quantity !== spec.quantity)
    return [
      {
        path: ['calc'],
        wrong: `${calculation.name} gives ${withArticle(calculation.result.quantity)}, and this spec is ${withArticle(spec.quantity)}`,
        fix: `write "quantity: ${calculation.result.quantity}"`,
      },
    ];
  return withADay(ofLibrary(spec, specs, calculation, given));
}

/** What is worked out of constants alone was found on no day. */
function withADay(recipe: Recipe | RecipeMistake[]): Recipe | RecipeMistake[] {
  if (!('ready' in recipe) || recipe.inputs.some(({ from }) => from === 'spec')) return recipe;
  return [
    {
      path: ['inputs'],
      wrong: 'none of them is measured, so that the result has no day',
      fix: 'name at least one spec',
    },
  ];
}

interface Given {
  readonly name: string;
  readonly text: string;
  /** What the file calls it, where that is not the name in the formula: the list that it stands in. */
  readonly key?: string;
}

/** As many values as `min` and `max` of a formula take. */
const MOST_LISTED = 99;

/** A list stands only where the calculation takes one. */
function severalGiven(given: readonly Given[], listKey: string | undefined): RecipeMistake[] {
  return [...Map.groupBy(given, ({ name }) => name)]
    .filter(([name, values]) => name !== listKey && values.length > 1)
    .map(([name, values]) => ({
      path: ['inputs', name],
      wrong: `${values.length} values stand where one is wanted`,
    }));
}

/** Only an input can be carried. */
function strayCarried({ carried = [] }: Spec, known: readonly string[]): RecipeMistake[] {
  return carried.flatMap((name, index) =>
    known.includes(name)
      ? []
      : [
          {
            path: ['carried', index],
            wrong: `there is no input "${name}"`,
            fix: suggest(name, known),
          },
        ],
  );
}

function ofLibrary(
  spec: Spec,
  specs: ReadonlyMap<string, Spec>,
  calculation: Calculation,
  given: readonly Given[],
): Recipe | RecipeMistake[] {
  const { many } = calculation;
  const known = [...Object.keys(calculation.inputs), ...(many ? [many.key] : [])];
  const unknown = [...new Set(given.map(({ name }) => name))].filter(
    (name) => !known.includes(name),
  );
  // A misspelt input is not also a missing one.
  const meant = unknown.map((name) => nearest(name, known));
  const listed = many ? given.filter(({ name }) => name === many.key) : [];
  const mistakes: RecipeMistake[] = unknown.map((name) => ({
    path: ['inputs', name],
    wrong: `${calculation.name} has no input "${name}"`,
    fix: suggest(name, known),
  }));
  mistakes.push(...severalGiven(given, many?.key), ...strayCarried(spec, known));
  if (many && listed.length < many.atLeast)
    mistakes.push({
      path: ['inputs', many.key],
      wrong: `${calculation.name} needs at least ${many.atLeast} of "${many.key}" (${many.what})`,
    });
  if (listed.length > MOST_LISTED)
    return [
      {
        path: ['inputs', many?.key ?? ''],
        wrong: `${listed.length} values are more than the ${MOST_LISTED} that a calculation takes`,
      },
    ];

  const ready = makeReady(calculation, listed.length);
  const inputs = ready.names.flatMap((name): RecipeInput[] => {
    const input = ready.inputs[name] as CalculationInput;
    const position =
      many && /^x\d+$/.test(name) && !(name in calculation.inputs)
        ? Number(name.slice(1)) - 1
        : undefined;
    const key = position === undefined ? name : (many?.key ?? name);
    if (meant.includes(key)) return [];
    const text =
      position === undefined
        ? (given.find((item) => item.name === name)?.text ?? input.otherwise)
        : listed[position]?.text;
    const result =
      text === undefined
        ? {
            wrong: `${calculation.name} needs "${name}" (${input.what})`,
            fix: `add ${name}: a spec's id, or a value like "1 ${input.unit}"`,
          }
        : inputFrom({ name, text, key }, input.quantity, spec, specs);
    if (!('wrong' in result)) return [result];
    mistakes.push({
      path: ['inputs', key, ...(position === undefined ? [] : [position])],
      ...result,
    });
    return [];
  });
  return mistakes.length > 0 ? mistakes : { spec, calculation, ready, inputs };
}

function ownFormula(
  spec: Spec,
  specs: ReadonlyMap<string, Spec>,
  given: readonly Given[],
): Recipe | RecipeMistake[] {
  const names = [...new Set(given.map(({ name }) => name))];
  const mistakes = [...severalGiven(given, undefined), ...strayCarried(spec, names)];
  const inputs = given.flatMap((item): RecipeInput[] => {
    const result = inputFrom(item, undefined, spec, specs);
    if (!('wrong' in result)) return [result];
    mistakes.push({ path: ['inputs', item.name], ...result });
    return [];
  });
  if (mistakes.length > 0) return mistakes;

  const kinds = Object.fromEntries(
    inputs.map((input) => [input.name, { what: input.name, ...kindAndUnit(input, specs) }]),
  );
  const ready = readyFormula(spec.formula ?? '', kinds, spec.quantity);
  return 'wrong' in ready
    ? [
        {
          path: ['formula'],
          wrong: `"${spec.formula}": ${ready.wrong}`,
          fix: formulaFix(ready.wrong),
        },
      ]
    : { spec, calculation: undefined, ready, inputs };
}

/** What to do about a formula, by what is wrong with it. */
function formulaFix(wrong: string): string | undefined {
  if (/^unknown name/.test(wrong)) return 'inputs are named under "inputs"';
  if (/^it gives/.test(wrong)) return 'correct the formula, or the quantity of the spec';
  return /end of expression/.test(wrong) ? 'end what was begun: a bracket, or a sum' : undefined;
}

function kindAndUnit(
  input: RecipeInput,
  specs: ReadonlyMap<string, Spec>,
): { quantity: QuantityKind; unit: string } {
  const unit = input.from === 'constant' ? input.unit : (specs.get(input.spec)?.unit ?? '1');
  return { quantity: kindOf(unit) ?? 'ratio', unit };
}

/** One input: the id of a spec, or a constant with its unit. The quantity must be the one the calculation wants. */
function inputFrom(
  { name, text, key: written = name }: Given,
  quantity: QuantityKind | undefined,
  spec: Spec,
  specs: ReadonlyMap<string, Spec>,
): RecipeInput | Omit<RecipeMistake, 'path'> {
  const other = specs.get(text);
  if (other !== undefined) {
    if (quantity !== undefined && other.quantity !== quantity)
      return {
        wrong: `"${text}" is ${withArticle(other.quantity)}, and ${written} is ${withArticle(quantity)}`,
        fix: ofKind(quantity, specs, spec),
      };
    return { from: 'spec', name, spec: text, carried: (spec.carried ?? []).includes(written) };
  }
  const constant = readConstant(text);
  if ('wrong' in constant) {
    const isId = /^[\w-]+$/.test(text) && /[a-z]/i.test(text) && !/^\d+[a-z]*$/i.test(text);
    if (isId) return { wrong: `unknown spec "${text}"`, fix: suggest(text, [...specs.keys()]) };
    // Lengths are told by millimetres already.
    const bare = quantity !== undefined && quantity !== 'length' && /^[-+]?[\d.]+$/.test(text);
    const fix = bare
      ? `write the unit after it, like "${text} ${unitsOf(quantity)[0]}"`
      : constant.fix;
    return { wrong: `"${text}" ${constant.wrong}`, fix };
  }
  const found = kindOf(constant.unit);
  if (quantity !== undefined && found !== quantity)
    return {
      wrong: `"${text}" is ${withArticle(found ?? 'unit')}, and ${written} is ${withArticle(quantity)}`,
      fix: `write it in ${unitsOf(quantity).slice(0, 4).join(', ')}`,
    };
  const { value, components, unit } = constant;
  const slope = baseSlope(unit, value);
  const key = `${spec.id} ${name}`;
  const inBase = components.map((component) => ({
    ...component,
    key: `${key} ${component.name}`,
    group: `${key} ${component.name}`,
    u: component.u * slope,
  }));
  return {
    from: 'constant',
    name,
    text,
    unit,
    value: { value: toBaseUnit(value, unit), components: inBase },
  };
}

function ofKind(
  quantity: QuantityKind,
  specs: ReadonlyMap<string, Spec>,
  besides: Spec,
): string | undefined {
  const like = [...specs.values()].find(
    (other) => other.quantity === quantity && other.id !== besides.id,
  );
  return like && `name a spec that is ${withArticle(quantity)}, like "${like.id}"`;
}

/** A word with its article: `a mass`, `an area`. */
function withArticle(word: string): string {
  return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}
