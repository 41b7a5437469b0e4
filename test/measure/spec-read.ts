import type { SpecFigures } from '../../src/measure/spec-figures.ts';
import { projectOf, type Written } from '../book/project-of.ts';

/** A spec, what it is read with, and its readings, each as far as it differs from a plain load on a scale. */
export interface SpecRead {
  readonly spec?: Written;
  readonly instrument?: Written;
  readonly readings: readonly Written[];
}

/** The figures of one spec, as the pages of a project get them. */
export function figuresOf({ spec, instrument, readings }: SpecRead): SpecFigures {
  const load = { id: 'load', name: 'Load', about: 'What it weighs.', system: 'weights' };
  const scale = { id: 'scale', name: 'Scale' };
  const mass = { quantity: 'mass', unit: 'kg', ...spec };
  const project = projectOf({
    lists: {
      specs: [{ ...load, ...mass }],
      instruments: [{ ...scale, quantity: mass.quantity, ...instrument }],
      readings: readings.map((reading, index) => ({
        id: `r-${index + 1}`,
        date: '2025-03-01',
        state: 'as-found',
        unit: mass.unit,
        spec: 'load',
        instrument: 'scale',
        ...reading,
      })),
    },
  });
  const [figures] = project.now.specs;
  if (figures === undefined) throw new Error('the spec is not in the book');
  return figures;
}
