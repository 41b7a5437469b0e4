import type { Project } from '../book/types.ts';
import { showMeasured } from '../measure/show.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import type { Site } from '../model/kinds.ts';
import { showDay } from '../time/day.ts';
import type { Addresses } from './address.ts';

/** What a citation needs besides the spec. */
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
  const { machine, builder = site.builder, otherUnits } = project.info;
  const value = latest
    ? `${showMeasured(latest, { language, otherUnits }).text} (${latest.U === undefined ? 'uncertainty not known' : 'U at 95 %'}), ${latest.kind === 'read' ? 'measured' : 'calculated'} ${showDay(latest.date, language)}`
    : 'not yet measured';
  return `${builder}, ${machine.year} ${machine.maker} ${machine.model}: ${spec.name}, ${value.replaceAll(/[\u00a0\u202f]/g, ' ')}. ${site.title}, ${to.absolute(to.spec(project, spec.id))}`;
}
