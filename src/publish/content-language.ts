import type { Entry, Project } from '../book/types.ts';
import type { Site } from '../model/kinds.ts';

/** Tag of the language that a builder wrote a project or one of its entries in; the site's own words may be in another. */
export function contentLanguage(site: Site, project: Project, entry?: Entry): string {
  return entry?.language ?? project.info.language ?? site.language;
}
