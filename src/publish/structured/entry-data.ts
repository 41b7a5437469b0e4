import type { Entry, Project } from '../../book/types.ts';
import type { Site } from '../../model/kinds.ts';
import { momentAddress } from '../../time/moment.ts';
import type { Addresses } from '../address.ts';
import { contentLanguage } from '../content-language.ts';
import { builderData, machineData } from './machine.ts';
import type { Structured } from './write-json-ld.ts';

/** What an entry's data needs besides it. */
export interface EntryContext {
  readonly site: Site;
  readonly to: Addresses;
  /** Whole addresses of its photos. */
  readonly images: readonly string[];
}

/** An entry as a TechArticle: an article that says how something is done. */
export function entryData(project: Project, entry: Entry, context: EntryContext): Structured {
  const { site, to, images } = context;
  const phase = project.phases.find(({ id }) => id === entry.phase);
  return {
    '@type': 'TechArticle',
    headline: entry.title,
    description: entry.summary,
    url: to.absolute(to.entry(project, entry)),
    inLanguage: contentLanguage(site, project, entry),
    datePublished: entry.date,
    dateModified: entry.date,
    author: builderData(project, site),
    articleSection: phase?.name,
    keywords: entry.tags?.join(', '),
    image: images.length > 0 ? images : undefined,
    position: entry.number,
    isPartOf: {
      '@type': 'CreativeWorkSeries',
      name: project.info.name,
      url: to.absolute(to.project(project)),
    },
    about: machineData(project),
    video: entry.video && videoData(entry, entry.video, site),
  };
}

/** The video and its moments. When it was uploaded, and how long it is, the ledger does not know. */
function videoData(entry: Entry, video: string, site: Site): Structured {
  const moments = [...(entry.moments ?? [])].sort((a, b) => a.at - b.at);
  return {
    '@type': 'VideoObject',
    name: entry.title,
    description: entry.summary,
    url: video,
    hasPart: moments.map(({ at, label }) => ({
      '@type': 'Clip',
      name: label,
      startOffset: at,
      url: momentAddress(site.moments, video, at),
    })),
  };
}
