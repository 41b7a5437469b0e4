import type { Project } from '../../book/types.ts';
import type { SpecFigures } from '../../measure/spec-figures.ts';
import type { SpecValue } from '../../measure/spec-value.ts';
import type { Addresses } from '../address.ts';
import { machineData } from './machine.ts';
import { unitCode } from './unit-code.ts';
import type { Structured } from './write-json-ld.ts';

/** A machine with every value of one of its specs, each a PropertyValue. */
export function specData(figures: SpecFigures, project: Project, to: Addresses): Structured {
  const values = figures.history.map((value) => valueData(value, figures, { project, to }));
  return {
    ...machineData(project),
    additionalProperty: values.length > 0 ? values : undefined,
  };
}

function valueData(
  value: SpecValue,
  { spec }: SpecFigures,
  { project, to }: { readonly project: Project; readonly to: Addresses },
): Structured {
  const unit = { unitText: spec.unit, unitCode: unitCode(spec.unit) };
  return {
    '@type': 'PropertyValue',
    name: spec.name,
    description: `${value.kind === 'read' ? 'Measured' : 'Calculated'} ${value.date}, ${value.state.replaceAll('-', ' ')}`,
    propertyID: to.absolute(to.spec(project, spec.id)),
    url: to.absolute(to.reading(project, spec.id, value.id)),
    value: plainNumber(value.value),
    ...unit,
    measurementTechnique: techniqueOf(value, project),
    valueReference: value.U !== undefined && {
      '@type': 'PropertyValue',
      name: 'Expanded uncertainty U, coverage 95 %',
      value: plainNumber(value.U),
      ...unit,
    },
  };
}

/** What it was read with, or by which calculation it was worked out. */
function techniqueOf(value: SpecValue, project: Project): string | undefined {
  if (value.kind === 'worked') return value.recipe.calculation?.title ?? value.recipe.ready.text;
  const { instrument } = value.reading;
  return project.instruments.find(({ id }) => id === instrument)?.name;
}

/** Without the noise of binary fractions: ten digits are more than any instrument has. */
function plainNumber(value: number): number {
  return Number(value.toPrecision(10));
}
