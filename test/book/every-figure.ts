import type { Project } from '../../src/book/types.ts';

/** Works out every figure of a project on its first and last day. */
export function everyFigure(project: Project): number {
  return [project.now, project.asOf(project.firstDay)].flatMap((view) => [
    view.phases,
    view.specs,
    view.hoursByPhase,
    view.hoursByWork,
    view.hoursByPerson,
    view.costsByCategory,
    view.costsByPhase,
    view.costsBySource,
    view.partsByState,
    view.partsBySource,
  ]).length;
}
