import { type Problem, problemAt } from '../read/problem.ts';

/** That another process is writing, as a problem that goes by itself. */
export function busyProblem(project: string, busy: string): Problem {
  return problemAt({ file: project, line: 1, column: 1 }, 'write/busy', busy);
}
