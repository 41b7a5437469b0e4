import type { ReadContent } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { languageProblems } from './languages.ts';
import type { Rule } from './rule.ts';

/** A time zone is one of the IANA names; it decides which day it is. */
export const timeZoneExists: Rule = ({ project }) => {
  const zone = project.info?.value.timeZone;
  if (zone === undefined || isTimeZone(zone)) return [];
  return [
    problemAt(
      (project.info as NonNullable<typeof project.info>).raw.placeOf(['timeZone']),
      'project/time-zone',
      `timeZone: "${zone}" is no time zone`,
      'write an IANA name, like "Europe/London"',
    ),
  ];
};

/** Whether the name is a time zone of the IANA data base. */
export function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

/** The site's language is a tag of BCP 47, and there is at least one project. */
export function checkSite(content: ReadContent): Problem[] {
  const problems: Problem[] = [];
  const { site, projects } = content;
  if (site) problems.push(...languageProblems(site.value.language, site.raw));
  if (projects.length === 0)
    problems.push(
      problemAt(
        { file: 'site.yaml', line: 1, column: 1 },
        'site/no-project',
        'there is no project folder beside site.yaml',
        'make one, with a project.yaml in it',
      ),
    );
  return problems;
}

/** A reading whose instrument's calibration had run out on its day: worth knowing, no reason to stop. */
export const calibrationInDate: Rule = ({ project }) => {
  const instruments = new Map(project.lists.instruments.map(({ value }) => [value.id, value]));
  return project.lists.readings.flatMap(({ raw, value }): Problem[] => {
    const due = instruments.get(value.instrument)?.calibrationDue;
    if (due === undefined || value.date <= due) return [];
    const message = `the calibration of "${value.instrument}" ran out on ${due}, before this reading of ${value.date}`;
    return [
      {
        ...problemAt(
          raw.placeOf(['instrument']),
          'reading/calibration',
          message,
          'have it calibrated, and write the new dates in instruments',
        ),
        level: 'warning',
      },
    ];
  });
};
