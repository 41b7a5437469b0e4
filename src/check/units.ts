import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { QuantityKind } from '../units/kinds.ts';
import type { Quantity } from '../units/quantity.ts';
import { guessUnit, kindOf, unitsOf } from '../units/unit.ts';
import type { Rule } from './rule.ts';

/** Units belong to the quantity they are used for: a spec's limits to the spec, a reading to its spec and its instrument. */
export const unitsFitQuantities: Rule = ({ project }) => {
  const specs = new Map(project.lists.specs.map(({ value }) => [value.id, value]));
  const instruments = new Map(project.lists.instruments.map(({ value }) => [value.id, value]));
  const problems: Problem[] = [];

  for (const { raw, value } of project.lists.specs) {
    problems.push(...wrongUnit(raw, 'unit', value.unit, value.quantity, `the spec "${value.id}"`));
    for (const field of ['min', 'max', 'nominal', 'target'] as const)
      problems.push(
        ...wrongQuantity(raw, field, value[field], value.quantity, `the spec "${value.id}"`),
      );
    problems.push(
      ...wrongQuantity(
        raw,
        'tolerance',
        value.tolerance,
        widthKind(value.quantity),
        `the spec "${value.id}"`,
      ),
    );
  }
  for (const { raw, value } of project.lists.instruments) {
    for (const [field, quantity] of [
      ['step', value.step],
      ['stated-error', value.statedError],
      ['certificate-u', value.certificateU],
    ] as const) {
      problems.push(
        ...wrongQuantity(raw, field, quantity, value.quantity, `the instrument "${value.id}"`),
      );
    }
  }
  for (const { raw, value } of project.lists.readings) {
    const spec = specs.get(value.spec);
    const instrument = instruments.get(value.instrument);
    if (spec)
      problems.push(...wrongUnit(raw, 'unit', value.unit, spec.quantity, `the spec "${spec.id}"`));
    if (spec && instrument && instrument.quantity !== spec.quantity) {
      const fitting = project.lists.instruments
        .map((item) => item.value)
        .find((item) => item.quantity === spec.quantity);
      const message = `instrument: "${instrument.id}" takes ${instrument.quantity}, and the spec "${spec.id}" is a ${spec.quantity}`;
      problems.push(
        problemAt(
          raw.placeOf(['instrument']),
          'unit/instrument',
          message,
          fitting && `name an instrument that takes ${spec.quantity}, like "${fitting.id}"`,
        ),
      );
    }
  }
  for (const { raw, value } of project.lists.parts)
    problems.push(...wrongQuantity(raw, 'mass', value.mass, 'mass', `the part "${value.id}"`));
  return problems;
};

// A tolerance on a temperature is a difference of temperatures.
function widthKind(kind: QuantityKind): QuantityKind {
  return kind === 'temperature' ? 'temperature-difference' : kind;
}

function wrongQuantity(
  raw: RawRecord,
  field: string,
  quantity: Quantity | undefined,
  kind: QuantityKind,
  owner: string,
): Problem[] {
  return quantity === undefined ? [] : wrongUnit(raw, field, quantity.unit, kind, owner);
}

function wrongUnit(
  raw: RawRecord,
  field: string,
  unit: string,
  kind: QuantityKind,
  owner: string,
): Problem[] {
  const found = kindOf(unit);
  if (found === kind) return [];
  const guess = guessUnit(unit, kind);
  const fix = guess ? `write "${guess}"` : `units of ${kind}: ${unitsOf(kind).join(', ')}`;
  return [
    problemAt(
      raw.placeOf([field]),
      'unit/other-quantity',
      `${field}: "${unit}" is a unit of ${found}, and ${owner} is a ${kind}`,
      fix,
    ),
  ];
}
