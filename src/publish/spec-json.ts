import type { Project } from '../book/types.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import { intervalOf } from '../measure/value-on-day.ts';
import type { SpecValue } from '../measure/worked.ts';
import { ucumOf } from '../units/unit.ts';
import type { Addresses } from './address.ts';

/** A spec with all its values as plain data: numbers in its own unit, with the UCUM code of the unit. Private fields are not in it. */
export function specJson(
  { spec, history, limits, verdict, target, reached, change }: SpecFigures,
  project: Project,
  to: Addresses,
): object {
  return {
    id: spec.id,
    name: spec.name,
    about: spec.about,
    machine: `${project.info.machine.year} ${project.info.machine.maker} ${project.info.machine.model}`,
    address: to.absolute(to.spec(project, spec.id)),
    quantity: spec.quantity,
    unit: spec.unit,
    ucum: ucumOf(spec.unit),
    limits: limits && { lower: limits.lower, upper: limits.upper },
    verdict,
    target,
    reached,
    change: change && {
      before: change.before.id,
      after: change.after.id,
      difference: change.value,
      U: change.U,
      changed: change.changed,
    },
    workedOut: workedOutJson(history.at(-1)),
    values: history.map((value) => valueJson(value, project, to)),
  };
}

function valueJson(value: SpecValue, project: Project, to: Addresses): object {
  const spec = value.kind === 'read' ? value.reading.spec : value.recipe.spec.id;
  const common = {
    id: value.id,
    address: to.absolute(to.reading(project, spec, value.id)),
    date: value.date,
    state: value.state,
    value: value.value,
    u: value.u,
    degreesOfFreedom: Number.isFinite(value.nu) ? value.nu : undefined,
    U: value.U,
    coverage: value.U === undefined ? undefined : 0.95,
    interval: intervalOf(value),
  };
  if (value.kind === 'worked') return { ...common, measured: false };
  const { reading } = value;
  return {
    ...common,
    measured: true,
    raw: reading.values.map((raw) => raw.value),
    rawUnit: reading.unit,
    rawUcum: ucumOf(reading.unit),
    excluded: reading.excluded,
    because: reading.because,
    instrument: reading.instrument,
    conditions: reading.conditions,
  };
}

function workedOutJson(value: SpecValue | undefined): object | undefined {
  if (value?.kind !== 'worked') return undefined;
  const { calculation, ready, inputs } = value.recipe;
  return {
    calculation: calculation?.name,
    source: calculation?.source,
    formula: ready.text,
    inputs: Object.fromEntries(
      inputs.map((input) => [
        input.name,
        input.from === 'spec' ? { spec: input.spec } : { given: input.text },
      ]),
    ),
  };
}
