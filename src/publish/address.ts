import type { Entry, Project } from '../book/types.ts';
import { yearOf } from '../ledger/by-year.ts';
import { findRow, ownId, readingId } from '../ledger/find-row.ts';

/** The formats that entries are fed in. */
export type FeedKind = 'atom' | 'json';

/** Where everything on the site is. One place, so that an address never changes by accident. */
export interface Addresses {
  home(): string;
  method(): string;
  search(): string;
  /** The feed of entries of the site or of a project, or an archive of it. */
  feed(kind?: FeedKind, project?: Pick<Project, 'id'>, archive?: number): string;
  project(project: Project): string;
  log(project: Project): string;
  /** The index, as at the back of a handbook. */
  backIndex(project: Project): string;
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
  /** The rows of a calendar year of the costs or the hours. */
  ledgerYear(project: Project, what: 'costs' | 'hours', year: string): string;
  plan(project: Project): string;
  forecast(project: Project): string;
  earnedValue(project: Project): string;
  corrections(project: Project): string;
  /** What was said of a row that no longer counts, by the id of the row that says it. */
  correction(project: Project, said: string): string;
  /** How the total of an entry follows from the ledger page, where rows were corrected after it. */
  believed(project: Project, what: 'costs' | 'hours', entry: Entry): string;
  budget(project: Project): string;
  /** What a donor machine really cost. */
  donor(project: Project, source: string): string;
  /** What each part really cost. */
  partCosts(project: Project): string;
  parts(project: Project): string;
  /** The parts of a system. */
  system(project: Project, system: string): string;
  /** All that is known of one part. */
  part(project: Project, id: string): string;
  /** Where it all came from. */
  sources(project: Project): string;
  /** What is looked for, and what is for sale. */
  wanted(project: Project): string;
  wantedFeed(project: Project): string;
  /** The page of all downloads. */
  data(project: Project): string;
  /** A file of the downloads: `costs.csv`. */
  dataFile(project: Project, name: string): string;
  /** The page of the project's marks, which there is once it has one. */
  marks(project: Project): string;
  /** What was found on the parts, and the scale it is graded by. */
  survey(project: Project): string;
  /** Candidates for parts, and what was chosen. */
  choices(project: Project): string;
  /** The comparison of a part's or a group's candidates. */
  choice(project: Project, subject: string): string;
  /** All photos, and the page of one by its name there. */
  photos(project: Project): string;
  photo(project: Project, name: string): string;
  /** A derived picture. */
  picture(file: string): string;
  /** The printable record of the whole project. */
  dossier(project: Project): string;
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
  const inProject = (project: Pick<Project, 'id'>, path = '') => `${base}${project.id}/${path}`;
  const to: Addresses = {
    home: () => base,
    method: () => `${base}method/`,
    search: () => `${base}search/`,
    feed: (kind = 'atom', project = undefined, archive = undefined) =>
      `${project ? inProject(project) : base}feed${archive ? `/${archive}` : ''}.${kind}`,
    project: (project) => inProject(project),
    log: (project) => inProject(project, 'log/'),
    backIndex: (project) => inProject(project, 'index/'),
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
    ledgerYear: (project, what, year) => inProject(project, `${what}/${year}/`),
    plan: (project) => inProject(project, 'plan/'),
    forecast: (project) => inProject(project, 'forecast/'),
    earnedValue: (project) => inProject(project, 'earned-value/'),
    corrections: (project) => inProject(project, 'corrections/'),
    correction: (project, said) => `${to.corrections(project)}#${said}`,
    believed: (project, what, entry) => `${to.corrections(project)}#${what}-of-${entry.slug}`,
    budget: (project) => inProject(project, 'budget/'),
    donor: (project, source) => inProject(project, `donors/${source}/`),
    partCosts: (project) => inProject(project, 'costs/parts/'),
    parts: (project) => inProject(project, 'parts/'),
    system: (project, system) => `${to.parts(project)}#system-${system}`,
    part: (project, id) => inProject(project, `parts/${id}/`),
    sources: (project) => inProject(project, 'sources/'),
    wanted: (project) => inProject(project, 'wanted/'),
    wantedFeed: (project) => inProject(project, 'wanted.atom'),
    data: (project) => inProject(project, 'data/'),
    dataFile: (project, name) => inProject(project, `data/${name}`),
    marks: (project) => inProject(project, 'marks/'),
    survey: (project) => inProject(project, 'survey/'),
    choices: (project) => inProject(project, 'choices/'),
    choice: (project, subject) => `${to.choices(project)}#of-${subject}`,
    photos: (project) => inProject(project, 'photos/'),
    photo: (project, name) => inProject(project, `photos/${name}/`),
    picture: (file) => `${base}photos/${file}`,
    dossier: (project) => inProject(project, 'dossier/'),
    phase: (project, id) => `${to.hours(project)}#phase-${id}`,
    source: (project, id) => `${to.sources(project)}#source-${id}`,
    row: (project, id) => rowAddress(to, project, id),
    absolute: (path) => new URL(path, address).href,
  };
  return to;
}

/** Kinds that go by the id of their first row, so that a later one has no place of its own. */
const BY_FIRST_ID: ReadonlySet<string> = new Set([
  'parts',
  'orders',
  'candidates',
  'preparations',
  'waits',
]);

const saidId = ({ said }: { readonly said: string }): string => said;

function rowAddress(to: Addresses, project: Project, id: string): string {
  const reading = findRow(project.readings, id, readingId)?.reading;
  if (reading) return to.reading(project, reading.spec, id);
  const cost = findRow(project.costs, id);
  if (cost) return `${to.ledgerYear(project, 'costs', yearOf(cost.date))}#${id}`;
  if (findRow(project.rates, id)) return `${to.costs(project)}#${id}`;
  const worked = findRow(project.hours, id);
  if (worked) return `${to.ledgerYear(project, 'hours', yearOf(worked.date))}#${id}`;
  const order = findRow(project.orders, id, ownId);
  if (order) return `${to.budget(project)}#${order.id}`;
  if (findRow(project.budgets, id)) return `${to.budget(project)}#${id}`;
  if (findRow(project.waits, id)) return `${to.plan(project)}#${id}`;
  if (findRow(project.findings, id)) return `${to.survey(project)}#${id}`;
  if (findRow(project.candidates, id) ?? findRow(project.choices, id))
    return `${to.choices(project)}#${id}`;
  const said = findRow(project.corrections, id, saidId);
  if (said && (said.by === undefined || BY_FIRST_ID.has(said.kind)))
    return to.correction(project, id);
  const part = findRow(project.partRows, id, ownId);
  // A part whose last row was withdrawn has no page any more.
  if (part)
    return findRow(project.parts, part.id) ? to.part(project, part.id) : to.corrections(project);
  if (findRow(project.searches, id) ?? findRow(project.preparations, id, ownId))
    return `${to.parts(project)}#${id}`;
  // A cost row whose amount is withheld stands on no page by itself.
  return to.costs(project);
}
