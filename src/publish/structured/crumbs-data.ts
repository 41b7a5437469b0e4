import type { Project } from '../../book/types.ts';
import type { Site } from '../../model/kinds.ts';
import type { Addresses } from '../address.ts';
import type { Structured } from './write-json-ld.ts';

/** Pages that head a part of a project. */
const SECTIONS = {
  log: 'Log',
  specs: 'Specs',
  costs: 'Costs',
  hours: 'Hours',
  plan: 'Plan',
  parts: 'Parts',
  photos: 'Photos',
} as const;

/** Where a page is. */
export interface Whereabouts {
  readonly title: string;
  readonly path: string;
  readonly project: Project | undefined;
  readonly section: keyof typeof SECTIONS | 'project' | undefined;
}

/** The way to a page from the site's first; none for that page itself. */
export function crumbsData(
  { title, path, project, section }: Whereabouts,
  site: Site,
  to: Addresses,
): Structured | undefined {
  const above: [string, string][] = [[site.title, to.home()]];
  if (project) above.push([project.info.name, to.project(project)]);
  if (project && section && section !== 'project')
    above.push([SECTIONS[section], to[section](project)]);
  const way = above.some(([, address]) => address === path) ? above : [...above, [title, path]];
  if (way.length < 2) return undefined;
  return {
    '@type': 'BreadcrumbList',
    itemListElement: way.map(([name, address = ''], index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      item: to.absolute(address),
    })),
  };
}
