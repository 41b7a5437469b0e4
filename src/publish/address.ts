import type { Entry, Project } from '../book/types.ts';

/** Where everything on the site is. One place, so that an address never changes by accident. */
export interface Addresses {
  home(): string;
  method(): string;
  feed(): string;
  project(project: Project): string;
  log(project: Project): string;
  entry(project: Project, entry: Entry): string;
  specs(project: Project): string;
  spec(project: Project, id: string): string;
  /** The spec as JSON. */
  specData(project: Project, id: string): string;
  /** The spec's preview picture. */
  specCard(project: Project, id: string): string;
  /** The preview picture of an entry, and of a project. */
  entryCard(project: Project, entry: Entry): string;
  projectCard(project: Project): string;
  reading(project: Project, spec: string, reading: string): string;
  instrument(project: Project, id: string): string;
  costs(project: Project): string;
  hours(project: Project): string;
  corrections(project: Project): string;
  /** What was said of a row that no longer counts, by the id of the row that says it. */
  correction(project: Project, said: string): string;
  budget(project: Project): string;
  /** What a donor machine really cost. */
  donor(project: Project, source: string): string;
  /** What each part really cost. */
  partCosts(project: Project): string;
  parts(project: Project): string;
  /** The page of all downloads. */
  data(project: Project): string;
  /** A file of the downloads: `costs.csv`. */
  dataFile(project: Project, name: string): string;
  /** The page of the project's marks, which there is once it has one. */
  marks(project: Project): string;
  /** All photos, and the page of one by its name there. */
  photos(project: Project): string;
  photo(project: Project, name: string): string;
  /** A derived picture. */
  picture(file: string): string;
  phase(project: Project, id: string): string;
  source(project: Project, id: string): string;
  /** A ledger row of any kind, on the page where it stands. */
  row(project: Project, id: string): string;
  /** The same address with the site's own host before it. */
  absolute(path: string): string;
}

/** Addresses of a site that is published at `address`, which may be a folder of a host. */
export function addressesOf(address: string): Addresses {
  const base = new URL(address).pathname;
  const inProject = (project: Project, path = '') => `${base}${project.id}/${path}`;
  const to: Addresses = {
    home: () => base,
    method: () => `${base}method/`,
    feed: () => `${base}feed.atom`,
    project: (project) => inProject(project),
    log: (project) => inProject(project, 'log/'),
    entry: (project, entry) => inProject(project, `log/${entry.slug}/`),
    specs: (project) => inProject(project, 'specs/'),
    spec: (project, id) => inProject(project, `specs/${id}/`),
    specData: (project, id) => inProject(project, `specs/${id}.json`),
    specCard: (project, id) => `${base}cards/${project.id}/${id}.png`,
    entryCard: (project, { slug }) => `${base}cards/${project.id}/log/${slug}.png`,
    projectCard: (project) => `${base}cards/${project.id}.png`,
    reading: (project, spec, reading) => `${to.spec(project, spec)}#${reading}`,
    instrument: (project, id) => `${to.specs(project)}#instrument-${id}`,
    costs: (project) => inProject(project, 'costs/'),
    hours: (project) => inProject(project, 'hours/'),
    corrections: (project) => inProject(project, 'corrections/'),
    correction: (project, said) => `${to.corrections(project)}#${said}`,
    budget: (project) => inProject(project, 'budget/'),
    donor: (project, source) => inProject(project, `donors/${source}/`),
    partCosts: (project) => inProject(project, 'costs/parts/'),
    parts: (project) => inProject(project, 'parts/'),
    data: (project) => inProject(project, 'data/'),
    dataFile: (project, name) => inProject(project, `data/${name}`),
    marks: (project) => inProject(project, 'marks/'),
    photos: (project) => inProject(project, 'photos/'),
    photo: (project, name) => inProject(project, `photos/${name}/`),
    picture: (file) => `${base}photos/${file}`,
    phase: (project, id) => `${to.hours(project)}#phase-${id}`,
    source: (project, id) => `${to.parts(project)}#source-${id}`,
    row: (project, id) => rowAddress(to, project, id),
    absolute: (path) => new URL(path, address).href,
  };
  return to;
}

function rowAddress(to: Addresses, project: Project, id: string): string {
  const reading = project.readings.find((item) => item.reading.id === id)?.reading;
  if (reading) return to.reading(project, reading.spec, id);
  if (project.costs.some((row) => row.id === id)) return `${to.costs(project)}#${id}`;
  if (project.rates.some((row) => row.id === id)) return `${to.costs(project)}#${id}`;
  if (project.hours.some((row) => row.id === id)) return `${to.hours(project)}#${id}`;
  const order = project.orders.find((row) => row.rowId === id);
  if (order) return `${to.budget(project)}#${order.id}`;
  if (project.budgets.some((row) => row.id === id)) return `${to.budget(project)}#${id}`;
  const said = project.corrections.find((item) => item.said === id);
  if (said && (said.by === undefined || said.kind === 'parts' || said.kind === 'orders'))
    return to.correction(project, id);
  if (
    project.partRows.some((row) => row.rowId === id) ||
    project.searches.some((row) => row.id === id)
  )
    return `${to.parts(project)}#${id}`;
  // A cost row whose amount is withheld stands on no page by itself.
  return to.costs(project);
}
