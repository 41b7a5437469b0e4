import type { Problem } from '../read/problem.ts';
import { busyProblem } from './busy-problem.ts';

/** How often a change is made of the files as they are, where another program saves them meanwhile. */
const TRIES = 5;

/** An editor knows nothing of the lock: what it saved while a change was made stays, and the change is made anew of that. */
export async function steadily<Result>(
  project: string,
  make: () => Promise<Result | 'changed'>,
): Promise<Result | { readonly problems: readonly Problem[] }> {
  for (let tries = TRIES; tries > 0; tries--) {
    const made = await make();
    if (made !== 'changed') return made;
  }
  const why = 'another program saves its files again and again; nothing was written';
  return { problems: [busyProblem(project, why)] };
}
