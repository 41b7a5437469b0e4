import { yearsOf } from '../../src/ledger/by-year.ts';
import { openBuiltDemo } from '../site/built-book.ts';

/** Addresses of one page of every kind, below the site's root, and of as many entries as it takes to see every component. */
export async function pageKinds(): Promise<string[]> {
  const { book } = await openBuiltDemo();
  const [project] = book.projects.filter(({ info }) => info.status === 'underway');
  const spec = project?.now.specs.find(({ change, verdict }) => change && verdict)?.spec.id;
  const donor = project?.sources.find(({ kind }) => kind === 'donor')?.id;
  const part = project?.preparations.find(({ out }) => out)?.parts[0];
  const photo = project?.photoRecords.find(({ callouts }) => callouts)?.id;
  if (!project || !spec || !donor || !part || !photo)
    throw new Error('the demo has no project under way with all kinds of page');
  const years = {
    costs: yearsOf(project.costs).at(-1),
    hours: yearsOf(project.hours).at(-1),
  };
  const inProject = [
    '',
    'log/',
    'index/',
    'costs/',
    `costs/${years.costs}/`,
    'budget/',
    'costs/parts/',
    `donors/${donor}/`,
    'hours/',
    `hours/${years.hours}/`,
    'plan/',
    'forecast/',
    'earned-value/',
    'parts/',
    'sources/',
    'wanted/',
    `parts/${part}/`,
    'data/',
    'corrections/',
    'marks/',
    'survey/',
    'choices/',
    'photos/',
    `photos/${photo}/`,
    'dossier/',
    'specs/',
    `specs/${spec}/`,
  ];
  return [
    '',
    'method/',
    'search/',
    '404.html',
    ...inProject.map((path) => `${project.id}/${path}`),
    ...entriesWithEverything(book.projects),
  ];
}

type Projects = Awaited<ReturnType<typeof openBuiltDemo>>['book']['projects'];

function entriesWithEverything(projects: Projects): string[] {
  const seen = new Set<string>();
  return projects
    .flatMap(({ id, entries }) =>
      entries.map(({ slug, components }) => ({
        path: `${id}/log/${slug}/`,
        names: new Set(components.map(({ name }) => name)),
      })),
    )
    .sort((a, b) => b.names.size - a.names.size)
    .filter(({ names }) => {
      const adds = !names.isSubsetOf(seen);
      for (const name of names) seen.add(name);
      return adds;
    })
    .map(({ path }) => path);
}
