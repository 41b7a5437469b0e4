import type { ReadEntry, ReadProject } from '../read/content.ts';
import type { UsedComponent } from '../read/mdx.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Day } from '../time/day.ts';
import type { Rule } from './rule.ts';

/** What an entry shows of a survey or of candidates had been noted by the entry's day. */
export const shownDecisionsAreThere: Rule = ({ project }) => {
  const lost = ['findings', 'candidates'].some(
    (kind) => project.lost.kinds.has(kind) || (project.lost.ids.get(kind)?.length ?? 0) > 0,
  );
  if (lost) return [];
  return project.entries.flatMap((entry) =>
    entry.body.components.flatMap((component) => notThere(component, entry, project)),
  );
};

function notThere(component: UsedComponent, entry: ReadEntry, project: ReadProject): Problem[] {
  const textOf = (name: string) => {
    const literal = component.props.find((prop) => prop.name === name)?.literal;
    return typeof literal === 'string' ? literal : undefined;
  };
  const of = textOf('of');
  const { date } = entry.value;
  if (of === undefined) return [];
  if (component.name === 'Survey' && project.lists.surveys.some(({ value }) => value.id === of)) {
    const system = textOf('system');
    if (hasFinding(project, { survey: of, system }, date)) return [];
    const what = system ? `finding in system "${system}"` : 'finding';
    return [nothing(component, of, what, date, 'findings')];
  }
  if (component.name === 'Choice' && isSubject(project, of) && !hasCandidate(project, of, date))
    return [nothing(component, of, 'candidate', date, 'candidates')];
  return [];
}

function hasFinding(
  project: ReadProject,
  { survey, system }: { survey: string; system: string | undefined },
  day: Day,
): boolean {
  const systems = new Map(project.lists.parts.map(({ value }) => [value.id, value.system]));
  return project.lists.findings.some(
    ({ value }) =>
      value.survey === survey &&
      value.date <= day &&
      (system === undefined || systems.get(value.part) === system),
  );
}

function partsOf(project: ReadProject, id: string): readonly string[] {
  return project.lists.groups.find(({ value }) => value.id === id)?.value.parts ?? [id];
}

function isSubject({ lists }: ReadProject, id: string): boolean {
  return [...lists.groups, ...lists.parts].some(({ value }) => value.id === id);
}

function hasCandidate(project: ReadProject, id: string, day: Day): boolean {
  const parts = partsOf(project, id);
  return project.lists.candidates.some(
    ({ value }) => parts.includes(value.part) && value.date <= day,
  );
}

function nothing(
  component: UsedComponent,
  id: string,
  what: string,
  day: Day,
  list: string,
): Problem {
  return problemAt(
    component,
    'component/nothing-noted',
    `<${component.name}> of "${id}": there is no ${what} on or before ${day}`,
    `add it to ledger/${list}, or take the component out`,
  );
}
