import { hasBudget } from '../cost/budget-figures.ts';
import { photoList } from '../publish/photo-list.ts';
import { siteNow } from './now.ts';

/** One page for every project. */
export async function projectPaths() {
  const { here } = await siteNow();
  return here.map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project with a budget or an order. */
export async function budgetPaths() {
  const { here } = await siteNow();
  return here.filter(hasBudget).map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project that has a mark. */
export async function markedPaths() {
  const { here } = await siteNow();
  return here.filter(({ marks }) => marks).map(({ id }) => ({ params: { project: id } }));
}

/** One page for every entry of every project. */
export async function entryPaths() {
  const { here } = await siteNow();
  return here.flatMap(({ id, entries }) =>
    entries.map(({ slug }) => ({ params: { project: id, entry: slug } })),
  );
}

/** One page for every part of every project. */
export async function partPaths() {
  const { here } = await siteNow();
  return here.flatMap(({ id, parts }) =>
    parts.map((part) => ({ params: { project: id, part: part.id } })),
  );
}

/** One page for every donor machine of every project. */
export async function donorPaths() {
  const { here } = await siteNow();
  return here.flatMap(({ id, sources }) =>
    sources
      .filter(({ kind }) => kind === 'donor')
      .map((source) => ({ params: { project: id, source: source.id } })),
  );
}

/** One page for every spec of every project, measured already or not. */
export async function specPaths() {
  const { here } = await siteNow();
  return here.flatMap(({ id, specs }) =>
    specs.map((spec) => ({ params: { project: id, spec: spec.id } })),
  );
}

/** One page for every project whose marks have a key. */
export async function signedPaths() {
  const { here } = await siteNow();
  return here.filter(({ marks }) => marks?.key).map(({ id }) => ({ params: { project: id } }));
}

/** One page for every project that shows a photo. */
export async function photosPaths() {
  const { here } = await siteNow();
  return here
    .filter((project) => photoList(project).length > 0)
    .map(({ id }) => ({ params: { project: id } }));
}

/** One page for every photo of every project. */
export async function photoPaths() {
  const { here } = await siteNow();
  return here.flatMap((project) =>
    photoList(project).map(({ name }) => ({ params: { project: project.id, photo: name } })),
  );
}
