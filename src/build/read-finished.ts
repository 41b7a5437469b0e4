import { type EntryTexts, entryTexts } from './entry-texts.ts';
import type { ToldOutside } from './ready.ts';
import { writeSearch } from './write-search.ts';

/** What finished pages are read with. */
export type Outside = Pick<ToldOutside, 'site' | 'searched' | 'feeds'>;

/** Writes the indexes of projects whose pages are made in a folder, and gives the texts of their entries. */
export async function readFinished(
  folder: string,
  projects: readonly string[],
  outside: Outside,
): Promise<EntryTexts> {
  for (const id of projects) await writeSearch(folder, outside, id);
  return entryTexts(folder, projects, outside);
}

/** What of it is about some projects. */
export function ofProjects(
  projects: readonly string[],
  { site, searched, feeds }: Outside,
): Outside {
  const ids = new Set(projects);
  return {
    site,
    searched: searched.filter(({ project }) => ids.has(project)),
    feeds: feeds.filter(({ project }) => project !== undefined && ids.has(project.id)),
  };
}
