import type { Project } from '../book/types.ts';
import type { Standing } from '../ledger/standing.ts';
import type { Candidate, PartGroup } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import type { ShareOf } from './candidate-cost.ts';
import { goneCandidates, type Weighed, weighCandidates } from './candidates.ts';
import { comparisonDay, type Decision, decisionsOn, type Subject } from './choices.ts';
import { type GroupWay, groupWays } from './group-sums.ts';
import { partOn } from './survey.ts';

/** The candidates of one part side by side. */
export interface PartComparison {
  readonly part: string;
  readonly name: string;
  readonly weighed: readonly Weighed[];
  /** Candidates that were withdrawn. */
  readonly gone: readonly (Candidate & Standing)[];
  /** Choices about this part alone. */
  readonly decisions: readonly Decision[];
}

/** All that a page says of a part's or a group's candidates. */
export interface Comparison {
  readonly subject: Subject;
  readonly name: string;
  readonly group: PartGroup | undefined;
  /** The day as of which the figures are. */
  readonly day: Day;
  readonly parts: readonly PartComparison[];
  readonly ways: readonly GroupWay[];
  /** Choices about the group; empty for a part alone, which has its own. */
  readonly decisions: readonly Decision[];
}

/** How to compare: on which day, for which readers, and with which shares of donors. */
export interface Comparing {
  readonly day: Day;
  readonly language: string;
  /** Shares of donors as they were on a day, where there are accounts of donors. */
  readonly sharesOn?: ((day: Day) => ShareOf) | undefined;
}

/** Compares the candidates for a part or a group as they stood when it was chosen, or on the day that is looked at. */
export function compareCandidates(
  project: Project,
  subject: Subject,
  { day, language, sharesOn }: Comparing,
): Comparison {
  const asOf = comparisonDay(project, subject, day);
  const weighing = { day: asOf, language, shareOf: sharesOn?.(asOf) };
  const group = subject.isGroup ? project.groups.find(({ id }) => id === subject.id) : undefined;
  const parts = subject.parts.map((part): PartComparison => {
    const alone = { id: part, parts: [part], isGroup: false };
    return {
      part,
      name: partOn(project, part, day)?.name ?? part,
      weighed: weighCandidates(project, part, weighing),
      gone: goneCandidates(project, part, asOf),
      decisions: decisionsOn(project, alone, day).filter(
        ({ choice }) => choice.group === undefined,
      ),
    };
  });
  return {
    subject,
    name: group?.name ?? parts[0]?.name ?? subject.id,
    group,
    day: asOf,
    parts,
    ways: group ? groupWays(project, subject, weighing) : [],
    decisions: group ? decisionsOn(project, subject, day) : [],
  };
}

/** What there is to compare on a day: groups of which a part has a candidate, then parts that are in no group. */
export function subjectsOn(project: Project, day: Day): readonly Subject[] {
  const known = new Set(
    project.candidates.filter(({ date }) => date <= day).map((candidate) => candidate.part),
  );
  const groups = project.groups
    .filter(({ parts }) => parts.some((part) => known.has(part)))
    .map(({ id, parts }) => ({ id, parts, isGroup: true }));
  const grouped = new Set(groups.flatMap(({ parts }) => parts));
  const alone = [...known].filter((part) => !grouped.has(part));
  return [...groups, ...alone.map((id) => ({ id, parts: [id], isGroup: false }))];
}
