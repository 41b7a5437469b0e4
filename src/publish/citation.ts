import type { Entry, Project } from '../book/types.ts';
import { showMeasured } from '../measure/show.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import type { Part, Site } from '../model/kinds.ts';
import { type Day, showDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import type { Addresses } from './address.ts';

/** What a citation needs besides what is cited. */
export interface CitationContext {
  readonly to: Addresses;
  readonly site: Site;
  readonly language: string;
}

/** A line to cite a spec by: builder, machine, spec, value with U, day, address. */
export function citation(
  { spec, latest }: SpecFigures,
  project: Project,
  { to, site, language }: CitationContext,
): string {
  const { general, log } = wordsOf(language);
  const words = log.sharing.citation;
  const { otherUnits } = project.info;
  const value = latest
    ? words[latest.kind === 'read' ? 'measured' : 'calculated']({
        value: showMeasured(latest, { language, otherUnits }).text,
        uncertainty: latest.U === undefined ? words.unknown : words.known,
        day: showDay(latest.date, language),
      })
    : general.notYetMeasured;
  const about = `${spec.name}, ${value.replaceAll(/[\u00a0\u202f]/g, ' ')}`;
  return `${source(project, site)}: ${about}. ${site.title}, ${to.absolute(to.spec(project, spec.id))}`;
}

/** A line to cite an entry by: builder, machine, title, day, address. */
export function entryCitation(
  entry: Entry,
  project: Project,
  { to, site, language }: CitationContext,
): string {
  const about = `${entry.title}, ${showDay(entry.date, language)}`;
  return `${source(project, site)}: ${about}. ${site.title}, ${to.absolute(to.entry(project, entry))}`;
}

/** A line to cite a part by: builder, machine, part, the day its page is as of, address. */
export function partCitation(
  part: Part,
  project: Project,
  { to, site, language }: CitationContext,
): string {
  const words = wordsOf(language).log.sharing.citation;
  const about = words.asOf(part.name, showDay(project.lastDay, language));
  return `${source(project, site)}: ${about}. ${site.title}, ${to.absolute(to.part(project, part.id))}`;
}

/** A line to cite a photo by: builder, machine, what it shows, the day it was taken, address. */
export function photoCitation(
  { name, title }: { readonly name: string; readonly title: string },
  taken: Day | undefined,
  project: Project,
  { to, site, language }: CitationContext,
): string {
  const about = taken ? `${title}, ${showDay(taken, language)}` : title;
  return `${source(project, site)}: ${about}. ${site.title}, ${to.absolute(to.photo(project, name))}`;
}

function source({ info: { machine, builder } }: Project, site: Site): string {
  return `${builder ?? site.builder}, ${machine.year} ${machine.maker} ${machine.model}`;
}
