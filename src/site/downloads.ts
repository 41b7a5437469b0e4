import type { Project } from '../book/types.ts';
import { type DataFiles, dataFiles } from '../publish/data-files.ts';
import { found } from './found.ts';
import { siteNow } from './now.ts';

const made = new WeakMap<Project, DataFiles>();

/** The downloads of a project, made once for all their addresses. */
export async function downloadsOf(
  id: string | undefined,
): Promise<{ readonly project: Project; readonly files: DataFiles }> {
  const { book, site, to } = await siteNow();
  const project = found(book.project(id ?? ''), 'project');
  const files = made.get(project) ?? dataFiles(project, { site, to });
  made.set(project, files);
  return { project, files };
}

/** One file for every table of every project. */
export async function tablePaths() {
  const { here } = await siteNow();
  const paths = here.map(async ({ id }) => {
    const { files } = await downloadsOf(id);
    return files.tables.map(({ table }) => ({ params: { project: id, table: table.name } }));
  });
  return (await Promise.all(paths)).flat();
}

/** A file of JSON. */
export function jsonResponse(text: string, type = 'application/json'): Response {
  return new Response(text, { headers: { 'Content-Type': `${type}; charset=utf-8` } });
}
