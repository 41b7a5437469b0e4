import type { Entry, Project } from './types.ts';

/** Entries that show a spec in a component, name one of its readings, or point at it in their video; in order. */
export function entriesAbout(project: Project, spec: string): readonly Entry[] {
  const readings = new Set(
    project.readings
      .filter(({ reading }) => reading.spec === spec)
      .map(({ reading }) => reading.id),
  );
  return project.entries.filter(
    ({ components, tells = [], moments = [] }) =>
      tells.some((id) => readings.has(id)) ||
      moments.some((moment) => moment.spec === spec) ||
      components.some(
        ({ name, props }) =>
          ['Spec', 'Working', 'Change'].includes(name) &&
          props.some((prop) => prop.name === 'of' && [prop.literal].flat().includes(spec)),
      ),
  );
}
