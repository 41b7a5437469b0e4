import type { Project } from '../../src/book/types.ts';
import type { SpecFigures } from '../../src/measure/spec-figures.ts';
import type { SpecValue, Worked } from '../../src/measure/worked.ts';
import { projectOf, type Written } from '../book/project-of.ts';

/** Specs by id, and readings as `spec: values` or as far as they differ from a plain one; lengths in mm unless they say otherwise. */
export interface MeasuredLists {
  readonly specs: Readonly<Record<string, Written>>;
  readonly readings?: readonly (Written & { readonly spec: string })[];
  readonly instruments?: readonly Written[];
}

/** A project of specs that are read and worked out. A reading without more is one value of 1 March with a plain rule. */
export function measuredProject({
  specs,
  readings = [],
  instruments = [],
}: MeasuredLists): Project {
  const plain = { about: 'What it is.', system: 'bench', quantity: 'length', unit: 'mm' };
  return projectOf({
    lists: {
      specs: Object.entries(specs).map(([id, spec]) => ({ id, name: id, ...plain, ...spec })),
      instruments: [
        { id: 'rule', name: 'Rule', quantity: 'length' },
        ...instruments.map((item) => ({ name: `${item.id}`, quantity: 'length', ...item })),
      ],
      readings: readings.map((reading, index) => ({
        id: `r-${index + 1}`,
        date: '2025-03-01',
        state: 'as-found',
        unit: `${specs[reading.spec]?.unit ?? 'mm'}`,
        instrument: 'rule',
        ...reading,
      })),
    },
  });
}

/** All values of a spec. */
export function valuesIn(project: Project, spec: string): readonly SpecValue[] {
  return project.values.get(spec) ?? [];
}

/** The newest value of a spec that is worked out. */
export function workedIn(project: Project, spec: string): Worked {
  const value = valuesIn(project, spec).at(-1);
  if (value?.kind !== 'worked') throw new Error(`"${spec}" has no worked-out value`);
  return value;
}

/** What is known of a spec now. */
export function figuresIn(project: Project, spec: string): SpecFigures {
  const figures = project.now.spec(spec);
  if (figures === undefined) throw new Error(`there is no spec "${spec}"`);
  return figures;
}
