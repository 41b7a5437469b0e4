import { hash } from 'node:crypto';
import type { Project } from '../../book/types.ts';
import type { Site } from '../../model/kinds.ts';
import { tongueOf } from '../../words/words.ts';
import type { Addresses } from '../address.ts';
import { contentLanguage } from '../content-language.ts';
import type { DataFiles } from '../data-files.ts';
import { builderData, machineData } from './machine.ts';
import type { Structured } from './write-json-ld.ts';

/** The downloads of a project as a Dataset, each file of them a DataDownload. */
export function datasetData(
  project: Project,
  files: DataFiles,
  { site, to }: { readonly site: Site; readonly to: Addresses },
): Structured {
  const file = (name: string, text: string, encodingFormat: string): Structured => ({
    '@type': 'DataDownload',
    name,
    contentUrl: to.absolute(to.dataFile(project, name)),
    encodingFormat,
    contentSize: `${Buffer.byteLength(text)} B`,
    sha256: hash('sha256', text),
  });
  return {
    '@type': 'Dataset',
    name: tongueOf(site.language).words.log.sharing.structured.ledger(project.info.name),
    description: project.info.summary,
    url: to.absolute(to.data(project)),
    inLanguage: contentLanguage(site, project),
    creator: builderData(project, site),
    version: project.lastDay,
    dateModified: project.lastDay,
    temporalCoverage: `${project.firstDay}/${project.lastDay}`,
    isAccessibleForFree: true,
    about: machineData(project),
    variableMeasured: project.specs.map(({ name }) => name),
    distribution: [
      file('datapackage.json', files.descriptor, 'application/json'),
      file('book.json', files.book, 'application/json'),
      ...files.tables.map(({ path, text }) => file(path, text, 'text/csv')),
    ],
  };
}
