import { literalProp } from './literal-prop.ts';
import type { Entry, Project } from './types.ts';

/** A hazard note of the log. */
export interface HazardNote {
  readonly entry: Entry;
  readonly signal: string;
  readonly hazard: string;
  readonly harm: string;
  readonly avoid: string;
}

/** Every hazard note of a project's log, in order. */
export function hazardsOf(project: Project): readonly HazardNote[] {
  return project.entries.flatMap((entry) =>
    entry.components
      .filter(({ name }) => name === 'Hazard')
      .map((used) => ({
        entry,
        signal: literalProp(used, 'signal'),
        hazard: literalProp(used, 'hazard'),
        harm: literalProp(used, 'harm'),
        avoid: literalProp(used, 'avoid'),
      })),
  );
}
