import type { Project } from '../book/types.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { SpecValue } from '../measure/worked.ts';
import type { Candidate, Choice, Source, Survey } from '../model/kinds.ts';
import { type Money, sum } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import {
  type CandidateCost,
  costOf,
  type Labour,
  labourOf,
  type ShareOf,
} from './candidate-cost.ts';
import { candidatesOn, chosenOn } from './choices.ts';
import type { Remaining } from './remaining.ts';
import { conditionOn, type SurveyedPart } from './survey.ts';

/** A candidate with all that a reader compares. */
export interface Weighed {
  readonly candidate: Candidate & Standing;
  readonly source: Source | undefined;
  readonly cost: CandidateCost;
  /** Hours at the stated rate; undefined where no rate or no hours are stated. */
  readonly labour: Labour | undefined;
  /** Money and hours at the stated rate together; undefined where one of them is not known. */
  readonly together: Money | undefined;
  /** What the newest survey says of it. */
  readonly condition: (SurveyedPart & { readonly survey: Survey }) | undefined;
  /** Thickness left: of the spec that it names, else the least that the survey read. */
  readonly remaining: Remaining | SpecValue | undefined;
  /** The choice by which it stands chosen. */
  readonly chosen: Choice | undefined;
}

/** How a comparison is made. */
export interface Weighing {
  readonly day: Day;
  readonly language: string;
  /** What a part bears of its donor; without it a donor's part shows the value that was stated for it. */
  readonly shareOf?: ShareOf | undefined;
}

/** The candidates for a part on a day, in the order they were found. */
export function weighCandidates(
  project: Project,
  part: string,
  weighing: Weighing,
): readonly Weighed[] {
  const chosen = chosenOn(project, weighing.day);
  return candidatesOn(project, part, weighing.day).map((candidate) => {
    const cost = costOf(project, candidate, weighing);
    const { hours } = candidate;
    const labour = hours === undefined ? undefined : labourOf(project, hours, weighing.language);
    const condition = conditionOn(project, candidate, weighing.day);
    return {
      candidate,
      source: project.sources.find(({ id }) => id === candidate.source),
      cost,
      labour,
      together: cost.money && labour && sum([cost.money, labour.money], project.currency),
      condition,
      remaining: statedRemaining(project, candidate, weighing.day) ?? condition?.least,
      chosen: chosen.get(candidate.id),
    };
  });
}

function statedRemaining(
  project: Project,
  { remaining }: Candidate,
  day: Day,
): SpecValue | undefined {
  return remaining === undefined ? undefined : project.asOf(day).spec(remaining)?.latest;
}

/** Candidates that no longer stand on a day and that no later row of the same candidate replaced. */
export function goneCandidates(
  project: Project,
  part: string,
  day: Day,
): readonly (Candidate & Standing)[] {
  const standing = new Set(candidatesOn(project, part, day).map(({ id }) => id));
  return project.candidates.filter(
    (item) =>
      item.part === part && item.date <= day && !standsOn(item, day) && !standing.has(item.id),
  );
}
