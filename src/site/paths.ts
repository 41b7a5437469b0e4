import { hasBudget } from '../cost/budget-figures.ts';
import { photoList } from '../publish/photo-list.ts';
import { siteNow } from './now.ts';

/** One page for every project. */
export async function projectPaths() {
  const { book } = await siteNow();
  return book.projects.map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project with a budget or an order. */
export async function budgetPaths() {
  const { book } = await siteNow();
  return book.projects.filter(hasBudget).map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project that has a mark. */
export async function markedPaths() {
  const { book } = await siteNow();
  return book.projects.filter(({ marks }) => marks).map(({ id }) => ({ params: { project: id } }));
}

/** One page for every entry of every project. */
export async function entryPaths() {
  const { book } = await siteNow();
  return book.projects.flatMap(({ id, entries }) =>
    entries.map(({ slug }) => ({ params: { project: id, entry: slug } })),
  );
}

/** One page for every part of every project. */
export async function partPaths() {
  const { book } = await siteNow();
  return book.projects.flatMap(({ id, parts }) =>
    parts.map((part) => ({ params: { project: id, part: part.id } })),
  );
}

/** One page for every donor machine of every project. */
export async function donorPaths() {
  const { book } = await siteNow();
  return book.projects.flatMap(({ id, sources }) =>
    sources
      .filter(({ kind }) => kind === 'donor')
      .map((source) => ({ params: { project: id, source: source.id } })),
  );
}

/** One page for every spec of every project, measured already or not. */
export async function specPaths() {
  const { book } = await siteNow();
  return book.projects.flatMap(({ id, specs }) =>
    specs.map((spec) => ({ params: { project: id, spec: spec.id } })),
  );
}

/** One page for every project whose marks have a key. */
export async function signedPaths() {
  const { book } = await siteNow();
  return book.projects
    .filter(({ marks }) => marks?.key)
    .map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project that shows a photo. */
export async function photosPaths() {
  const { book } = await siteNow();
  return book.projects
    .filter((project) => photoList(project).length > 0)
    .map(({ id }) => ({ params: { project: id } }));
}

/** One page for every photo of every project. */
export async function photoPaths() {
  const { book } = await siteNow();
  return book.projects.flatMap((project) =>
    photoList(project).map(({ name }) => ({ params: { project: project.id, photo: name } })),
  );
}
