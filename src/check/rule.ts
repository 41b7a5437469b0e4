import type { ReadProject } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import type { Day } from '../time/day.ts';
import type { KnownIds } from './known-ids.ts';

/** What a rule may look at. */
export interface RuleInput {
  readonly project: ReadProject;
  /** Today in the project's own time zone. */
  readonly today: Day;
  readonly known: KnownIds;
}

/** One thing that may not be. A rule looks, says all it finds, and changes nothing. */
export type Rule = (input: RuleInput) => Problem[];
