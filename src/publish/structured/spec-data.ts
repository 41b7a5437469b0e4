import type { Project } from '../../book/types.ts';
import { calculationTexts } from '../../calc/told.ts';
import type { SpecFigures } from '../../measure/spec-figures.ts';
import type { SpecValue } from '../../measure/worked.ts';
import type { Words } from '../../words/words.ts';
import type { Addresses } from '../address.ts';
import { machineData } from './machine.ts';
import { unitCode } from './unit-code.ts';
import type { Structured } from './write-json-ld.ts';

/** A machine with every value of one of its specs, each a PropertyValue. */
export function specData(
  figures: SpecFigures,
  project: Project,
  { to, words }: { readonly to: Addresses; readonly words: Words },
): Structured {
  const said = words.log.sharing.structured;
  const values = figures.history.map((value) =>
    valueData(value, figures, { project, to, words, said }),
  );
  return {
    ...machineData(project),
    additionalProperty: values.length > 0 ? values : undefined,
  };
}

interface Context {
  readonly project: Project;
  readonly to: Addresses;
  readonly words: Words;
  readonly said: Words['log']['sharing']['structured'];
}

function valueData(
  value: SpecValue,
  { spec }: SpecFigures,
  { project, to, words, said }: Context,
): Structured {
  const unit = { unitText: spec.unit, unitCode: unitCode(spec.unit) };
  return {
    '@type': 'PropertyValue',
    name: spec.name,
    description: said[value.kind === 'read' ? 'measured' : 'calculated'](
      value.date,
      said.states[value.state],
    ),
    propertyID: to.absolute(to.spec(project, spec.id)),
    url: to.absolute(to.reading(project, spec.id, value.id)),
    value: plainNumber(value.value),
    ...unit,
    measurementTechnique: techniqueOf(value, project, words),
    valueReference: value.U !== undefined && {
      '@type': 'PropertyValue',
      name: said.uncertainty,
      value: plainNumber(value.U),
      ...unit,
    },
  };
}

/** What it was read with, or by which calculation it was worked out. */
function techniqueOf(value: SpecValue, project: Project, words: Words): string | undefined {
  if (value.kind === 'worked') {
    const { calculation, ready } = value.recipe;
    return calculation ? calculationTexts(calculation, words).title : ready.text;
  }
  const { instrument } = value.reading;
  return project.instruments.find(({ id }) => id === instrument)?.name;
}

/** Without the noise of binary fractions: ten digits are more than any instrument has. */
function plainNumber(value: number): number {
  return Number(value.toPrecision(10));
}
