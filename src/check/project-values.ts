import { type MeasuredProject, measureAll } from '../measure/measure-all.ts';
import type { ReadProject } from '../read/content.ts';

const known = new WeakMap<ReadProject, MeasuredProject>();

/** Every value of a project as the book has it, and what stood in the way; worked out once for all rules that ask. */
export function valuesOfProject(project: ReadProject): MeasuredProject {
  const { lists } = project;
  const valuesOf = <Value>(list: readonly { readonly value: Value }[]) =>
    list.map(({ value }) => value);
  const measured =
    known.get(project) ??
    measureAll({
      specs: valuesOf(lists.specs),
      instruments: valuesOf(lists.instruments),
      readings: valuesOf(lists.readings).sort((a, b) =>
        a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
      ),
      checks: new Map(),
    });
  known.set(project, measured);
  return measured;
}
