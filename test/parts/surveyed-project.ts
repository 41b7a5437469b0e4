import type { Project } from '../../src/book/types.ts';
import { type SurveyedPart, surveyOn } from '../../src/parts/survey.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

/** What a test says of a surveyed sill; the rest is as in the small shop below. */
export interface SurveyedLists {
  readonly nominal?: string;
  /** Readings of the sill's sheet in mm, by id; one value each. */
  readonly readings?: Readonly<Record<string, string>>;
  readonly findings?: readonly Written[];
  readonly lists?: Parameters<typeof projectOf>[0]['lists'];
  readonly project?: Written;
  /** Expanded uncertainty at 95 % that the gauge has; none where it is not said. */
  readonly U?: string;
}

/** A project with one sill, two machines and a first survey. Readings and findings are of 1 March unless they say otherwise. */
export function surveyedProject(given: SurveyedLists = {}): Project {
  const { nominal = '1.5 mm', readings = {}, findings = [], lists = {}, project = {}, U } = given;
  return projectOf({
    project,
    lists: {
      sources: [
        { id: 'base', kind: 'base', name: 'The van' },
        { id: 'donor', kind: 'donor', name: 'The other van' },
        { id: 'made', kind: 'made', name: 'Made here' },
      ],
      surveys: [{ id: 'first', name: 'As found', date: '2025-03-01' }],
      parts: [
        { id: 'sill', name: 'Sill', system: 'body', source: 'base' },
        { id: 'floor', name: 'Floor', system: 'body', source: 'base' },
      ],
      specs: [
        {
          ...{ id: 'sheet', name: 'Sheet', about: 'Its thickness.', quantity: 'length' },
          ...{ unit: 'mm', system: 'body', nominal },
        },
      ],
      instruments: [
        {
          ...{ id: 'gauge', name: 'Gauge', quantity: 'length' },
          // k is that of a normal distribution at 95 %, so that the gauge's U is the U of the value.
          ...(U ? { 'certificate-u': U, 'certificate-k': '1.9599639845' } : {}),
        },
      ],
      readings: Object.entries(readings).map(([id, value]) => ({
        ...{ id, date: '2025-03-01', spec: 'sheet', state: 'as-found' },
        ...{ values: value, unit: 'mm', instrument: 'gauge' },
      })),
      findings: findings.map((finding, index) => ({
        ...{ id: `f-${index + 1}`, date: '2025-03-01', survey: 'first', part: 'sill' },
        ...finding,
      })),
      ...lists,
    },
  });
}

/** The first part of the first survey as it is known on a day. */
export function sillOn(project: Project, day = '2025-12-31'): SurveyedPart {
  const [survey] = project.surveys;
  const part = survey && surveyOn(project, survey, day as Day).parts[0];
  if (part === undefined) throw new Error('nothing was surveyed');
  return part;
}

/** Ids of the grades that are possible for the sill. */
export function gradesOf(given: SurveyedLists): string[] {
  return sillOn(surveyedProject(given)).graded.grades.map(({ id }) => id);
}
