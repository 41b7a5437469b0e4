import type { Spec } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { QuantityKind } from '../units/kinds.ts';
import type { Quantity } from '../units/quantity.ts';
import { guessUnit, kindOf, unitsOf } from '../units/unit.ts';
import type { Rule } from './rule.ts';

/** Units belong to the quantity they are used for: a spec's limits to the spec, a reading to its spec and its instrument. */
export const unitsFitQuantities: Rule = ({ project }) => {
  // Of two with one id the first counts: the second is a problem of its own.
  const byId = <Value extends { readonly id: string }>(
    list: readonly { readonly value: Value }[],
  ) => new Map(list.toReversed().map(({ value }) => [value.id, value]));
  const specs = byId(project.lists.specs);
  const instruments = byId(project.lists.instruments);
  const problems: Problem[] = [];

  for (const { raw, value } of project.lists.specs) {
    const wanted = measures('spec', value);
    problems.push(...wrongUnit(raw, 'unit', value.unit, value.quantity, wanted));
    for (const field of ['min', 'max', 'nominal', 'target'] as const)
      problems.push(...wrongQuantity(raw, field, value[field], value.quantity, wanted));
    const width = widthKind(value.quantity);
    problems.push(
      ...wrongQuantity(raw, 'tolerance', value.tolerance, width, `a tolerance on it is a ${width}`),
      ...wrongLengths(raw, value),
    );
  }
  for (const { raw, value } of project.lists.instruments) {
    for (const [field, quantity] of [
      ['step', value.step],
      ['stated-error', value.statedError],
      ['certificate-u', value.certificateU],
    ] as const) {
      problems.push(
        ...wrongQuantity(raw, field, quantity, value.quantity, measures('instrument', value)),
      );
    }
  }
  for (const { raw, value } of project.lists.readings) {
    const spec = specs.get(value.spec);
    const instrument = instruments.get(value.instrument);
    if (spec)
      problems.push(...wrongUnit(raw, 'unit', value.unit, spec.quantity, measures('spec', spec)));
    if (spec && instrument && instrument.quantity !== spec.quantity) {
      const fitting = project.lists.instruments
        .map((item) => item.value)
        .find((item) => item.quantity === spec.quantity);
      const message = `instrument: "${instrument.id}" measures ${instrument.quantity}, and ${measures('spec', spec)}`;
      problems.push(
        problemAt(
          raw.placeOf(['instrument']),
          'unit/instrument',
          message,
          fitting && `name an instrument that measures ${spec.quantity}, like "${fitting.id}"`,
        ),
      );
    }
  }
  for (const { raw, value } of project.lists.parts)
    problems.push(...wrongQuantity(raw, 'mass', value.mass, 'mass', 'a mass is wanted'));
  return problems;
};

/** A limit for a length has both lengths: the one it holds for, and the one that was measured over. */
function wrongLengths(raw: RawRecord, { per, over }: Pick<Spec, 'per' | 'over'>): Problem[] {
  const lone = per && !over ? 'per' : over && !per ? 'over' : undefined;
  if (lone)
    return [
      problemAt(
        raw.placeOf([lone]),
        'unit/limit-length',
        `${lone}: a limit for a length needs both "per" and "over"`,
        lone === 'per' ? 'add over: the length measured over' : 'add per: the length it holds for',
      ),
    ];
  return (['per', 'over'] as const).flatMap((field) => {
    const length = field === 'per' ? per : over;
    if (length && kindOf(length.unit) === 'length' && length.value <= 0)
      return [
        problemAt(
          raw.placeOf([field]),
          'unit/limit-length',
          `${field}: a length of ${length.value} ${length.unit} is not above 0`,
        ),
      ];
    return wrongQuantity(raw, field, length, 'length', 'a limit holds for a length');
  });
}

function measures(
  what: string,
  { id, quantity }: { readonly id: string; readonly quantity: QuantityKind },
): string {
  return `the ${what} "${id}" measures ${quantity}`;
}

// A tolerance on a temperature is a difference of temperatures.
function widthKind(kind: QuantityKind): QuantityKind {
  return kind === 'temperature' ? 'temperature-difference' : kind;
}

function wrongQuantity(
  raw: RawRecord,
  field: string,
  quantity: Quantity | undefined,
  kind: QuantityKind,
  wanted: string,
): Problem[] {
  return quantity === undefined ? [] : wrongUnit(raw, field, quantity.unit, kind, wanted);
}

function wrongUnit(
  raw: RawRecord,
  field: string,
  unit: string,
  kind: QuantityKind,
  wanted: string,
): Problem[] {
  const found = kindOf(unit);
  if (found === kind) return [];
  const guess = guessUnit(unit, kind);
  const fix = guess ? `write "${guess}"` : `units of ${kind}: ${unitsOf(kind).join(', ')}`;
  return [
    problemAt(
      raw.placeOf([field]),
      'unit/other-quantity',
      `${field}: "${unit}" is a unit of ${found}, and ${wanted}`,
      fix,
    ),
  ];
}
