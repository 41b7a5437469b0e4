import type { Project } from '../../book/types.ts';
import type { Site } from '../../model/kinds.ts';
import type { Words } from '../../words/words.ts';
import type { Addresses } from '../address.ts';
import type { Structured } from './write-json-ld.ts';

/** Where a page is. */
export interface Whereabouts {
  readonly title: string;
  readonly path: string;
  readonly project: Project | undefined;
  /** The page that heads its part of the project. */
  readonly section: keyof Words['sheet']['sections'] | 'project' | undefined;
}

/** The way to a page from the site's first; none for that page itself. */
export function crumbsData(
  { title, path, project, section }: Whereabouts,
  site: Site,
  { to, words }: { readonly to: Addresses; readonly words: Words },
): Structured | undefined {
  const above: [string, string][] = [[site.title, to.home()]];
  if (project) above.push([project.info.name, to.project(project)]);
  if (project && section && section !== 'project')
    above.push([words.sheet.sections[section], to[section](project)]);
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
