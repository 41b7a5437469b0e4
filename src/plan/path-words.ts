import type { Project } from '../book/types.ts';
import type { Words } from '../words/words.ts';
import { type Floats, PLANNED_START } from './floats.ts';

/** The chain that decides the finish, as `Floor, then Body, then Shelves`, and what it begins with. */
export function pathWords(
  { path }: Floats,
  project: Project,
  { plan: { plan: said } }: Words,
): { readonly chain: string; readonly begins: string } | undefined {
  if (path === undefined) return undefined;
  const nameOf = (id: string) => project.phases.find((phase) => phase.id === id)?.name ?? id;
  return {
    chain: path.ids.map(nameOf).join(said.chained),
    begins: beginning(path.wait, { project, nameOf, said }),
  };
}

function beginning(
  wait: string | undefined,
  {
    project,
    nameOf,
    said,
  }: {
    project: Project;
    nameOf: (id: string) => string;
    said: Words['plan']['plan'];
  },
): string {
  if (wait === undefined) return said.atOnce;
  if (wait === PLANNED_START) return said.onPlannedDay;
  const row = [...project.waits, ...project.preparations].find(({ id }) => id === wait);
  return said.afterWait(row?.what ?? nameOf(wait));
}
