// Reads, checks and works out a content folder in a process of its own, stage by stage; prints the seconds of each.
import { makeProject } from '../book/project.ts';
import type { Project } from '../book/types.ts';
import { checkContent } from '../check/check.ts';
import { budgetFigures } from '../cost/budget-figures.ts';
import { originsOn } from '../parts/origins.ts';
import { forecastHistory } from '../plan/project-forecast.ts';
import { planOn } from '../plan/project-plan.ts';
import { readContent } from '../read/content.ts';

const seconds: Record<string, number> = {};
let since = performance.now();
function lap(stage: string): void {
  const now = performance.now();
  seconds[stage] = (now - since) / 1000;
  since = now;
}

const content = await readContent(process.argv[2] ?? '');
lap('read');
const problems = checkContent(content, new Date());
lap('check');
const projects = content.projects.flatMap(
  (project) => makeProject(project, { drafts: false }) ?? [],
);
lap('book');
const shown = projects.flatMap(figures).length;
lap('figures');
const rows = content.projects.flatMap(({ lists }) => Object.values(lists).flat()).length;
console.log(JSON.stringify({ seconds, rows, shown, errors: problems.filter(isError).length }));

function isError({ level }: { level: string }): boolean {
  return level === 'error';
}

/** Everything measured, costed, timed and forecast of a project as it is now, and the forecasts of its entries. */
function figures(project: Project) {
  const { now } = project;
  return [
    ...[now.phases, now.hoursByPhase, now.hoursByWork, now.hoursByPerson, now.specs],
    ...[now.costsByCategory, now.costsByPhase, now.costsBySource, now.partsByState],
    ...[budgetFigures(now), originsOn(now), planOn(now), forecastHistory(project)],
  ];
}
