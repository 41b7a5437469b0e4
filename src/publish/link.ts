import type { Project } from '../book/types.ts';
import type { Addresses } from './address.ts';

/**
 * The address that a link in an entry leads to: `spec:front-axle-load` and its like go to their page, anything else stays.
 * That the id exists has been checked before.
 */
export function resolveLink(url: string, project: Project, to: Addresses): string {
  const match = /^([a-z]+):([^/].*)$/.exec(url);
  const [, scheme, id = ''] = match ?? [];
  switch (scheme) {
    case 'spec':
      return to.spec(project, id);
    case 'part':
      return to.part(project, firstIdOf(project, id));
    case 'cost':
    case 'row':
      return to.row(project, id);
    case 'phase':
      return to.phase(project, id);
    case 'source':
      return to.source(project, id);
    case 'entry': {
      const entry = project.entries.find(({ slug }) => slug === id);
      return entry ? to.entry(project, entry) : to.log(project);
    }
    default:
      return url;
  }
}

/** A part goes by the id of its first row, whichever of its rows a link names. */
function firstIdOf(project: Project, id: string): string {
  return project.partRows.find((row) => row.rowId === id)?.id ?? id;
}
