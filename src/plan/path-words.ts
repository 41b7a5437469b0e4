import type { Project } from '../book/types.ts';
import { type Floats, PLANNED_START } from './floats.ts';

/** The chain that decides the finish, as `Floor, then Body, then Shelves`, and what it begins with. */
export function pathWords(
  { path }: Floats,
  project: Project,
): { readonly chain: string; readonly begins: string } | undefined {
  if (path === undefined) return undefined;
  const nameOf = (id: string) => project.phases.find((phase) => phase.id === id)?.name ?? id;
  return {
    chain: path.ids.map(nameOf).join(', then '),
    begins: beginning(path.wait, project, nameOf),
  };
}

function beginning(
  wait: string | undefined,
  project: Project,
  nameOf: (id: string) => string,
): string {
  if (wait === undefined) return 'at once';
  if (wait === PLANNED_START) return 'on its planned day';
  const row = [...project.waits, ...project.preparations].find(({ id }) => id === wait);
  return `after “${row?.what ?? nameOf(wait)}”`;
}
