import type { Problem } from '../read/problem.ts';

/** The problems that were not there before, wherever in their file they stand now. */
export function newProblems(before: readonly Problem[], after: readonly Problem[]): Problem[] {
  const known = new Map<string, number>();
  for (const problem of before) known.set(nameOf(problem), (known.get(nameOf(problem)) ?? 0) + 1);
  return after.filter((problem) => {
    const left = known.get(nameOf(problem)) ?? 0;
    known.set(nameOf(problem), left - 1);
    return left <= 0;
  });
}

function nameOf({ level, code, file, message }: Problem): string {
  return [level, code, file, message].join('|');
}
