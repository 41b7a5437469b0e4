import type { Project } from '../../book/types.ts';
import type { Site } from '../../model/kinds.ts';
import type { Addresses } from '../address.ts';
import { contentLanguage } from '../content-language.ts';
import type { Structured } from './write-json-ld.ts';

/** The machine of a project. Its identity stays at home. */
export function machineData({ info }: Project): Structured {
  const { maker, model, year, kind } = info.machine;
  return {
    '@type': 'IndividualProduct',
    name: `${year} ${maker} ${model}`,
    category: kind,
    manufacturer: { '@type': 'Organization', name: maker },
    model,
    productionDate: String(year),
  };
}

/** The build of a project as a whole, which its entries are parts of. */
export function seriesData(project: Project, site: Site, to: Addresses): Structured {
  const { name, summary } = project.info;
  return {
    '@type': 'CreativeWorkSeries',
    name,
    description: summary,
    url: to.absolute(to.project(project)),
    inLanguage: contentLanguage(site, project),
    author: builderData(project, site),
    dateModified: project.lastDay,
    about: machineData(project),
  };
}

/** Who builds it, by the name that may be public. */
export function builderData({ info }: Project, site: Site): Structured {
  return { '@type': 'Person', name: info.builder ?? site.builder };
}
