import type { Project } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import type { Finding, Part, Survey } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import { type Found, type Graded, gradeOf } from './grade.ts';
import { scaleOf } from './grade-scale.ts';
import { leastOf, type Remaining, readingOn, remainingOf } from './remaining.ts';

/** One source's version of a part as a survey found it. */
export interface SurveyedPart {
  readonly part: Part;
  readonly source: string;
  readonly found: readonly Found[];
  /** The least thickness left of all places that were read. */
  readonly least: Remaining | undefined;
  readonly graded: Graded;
}

/** A survey as it was known on a day. */
export interface SurveyOnDay {
  readonly survey: Survey;
  readonly parts: readonly SurveyedPart[];
}

/** The parts of a survey with what was found by a day, in the order they were first looked at. */
export function surveyOn(project: Project, survey: Survey, day: Day): SurveyOnDay {
  const findings = project.findings.filter(
    (finding) => finding.survey === survey.id && standsOn(finding, day),
  );
  const versions = Map.groupBy(findings, (finding) => {
    const source = finding.source ?? partOn(project, finding.part, day)?.source ?? '';
    return JSON.stringify([finding.part, source]);
  });
  const parts = [...versions].flatMap(([key, group]) => {
    const [id = '', source = ''] = JSON.parse(key) as string[];
    const part = partOn(project, id, day);
    return part ? [surveyedPart(project, { part, source }, group, day)] : [];
  });
  return { survey, parts };
}

/** Every survey that had been taken by a day, the earliest first. */
export function surveysOn(project: Project, day: Day): readonly SurveyOnDay[] {
  return project.surveys
    .filter(({ date }) => date <= day)
    .sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1))
    .map((survey) => surveyOn(project, survey, day))
    .filter(({ parts }) => parts.length > 0);
}

/** What the newest survey that looked at one source's version of a part says of it on a day. */
export function conditionOn(
  project: Project,
  version: { readonly part: string; readonly source: string },
  day: Day,
): (SurveyedPart & { readonly survey: Survey }) | undefined {
  return surveysOn(project, day)
    .flatMap(({ survey, parts }) => parts.map((part) => ({ ...part, survey })))
    .findLast(({ part, source }) => part.id === version.part && source === version.source);
}

/** A part as its row said it on a day; a part that got its row later goes by its first. */
export function partOn(project: Project, id: string, day: Day): Part | undefined {
  const rows = project.partRows.filter((row) => row.id === id);
  return rows.find(({ since, until }) => standsOn({ since, until }, day)) ?? rows[0];
}

function surveyedPart(
  project: Project,
  { part, source }: Pick<SurveyedPart, 'part' | 'source'>,
  findings: readonly Finding[],
  day: Day,
): SurveyedPart {
  const specs = new Map(project.specs.map((spec) => [spec.id, spec]));
  const found = findings.map((finding) => {
    const remaining = (finding.readings ?? []).flatMap((id) => {
      const reading = readingOn(project, id, day);
      const spec = reading && specs.get(reading.reading.spec);
      return (reading && spec && remainingOf(reading, spec)) ?? [];
    });
    return { finding, remaining };
  });
  const least = leastOf(found.flatMap(({ remaining }) => remaining));
  return { part, source, found, least, graded: gradeOf(found, scaleOf(project)) };
}
