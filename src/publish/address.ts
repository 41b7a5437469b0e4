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
  parts(project: Project): string;
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
    parts: (project) => inProject(project, 'parts/'),
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
  return `${to.parts(project)}#${id}`;
}
