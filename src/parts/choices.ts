import type { Project } from '../book/types.ts';
import { firstIds } from '../ledger/corrections.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { Candidate, Choice } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';

/** A choice as it stood on a day. */
export interface Decision {
  readonly choice: Choice & Standing;
  /** Ids of the candidates chosen, each by that of its first row. */
  readonly candidates: readonly string[];
  /** Day of the later choice that took its place; undefined for the one that stands. */
  readonly changed: Day | undefined;
}

/** What a comparison is about: a part, or parts that go together. */
export interface Subject {
  readonly id: string;
  readonly parts: readonly string[];
  readonly isGroup: boolean;
}

/** The part or group with an id; undefined where neither has it. A group goes before a part of the same name. */
export function subjectOf(project: Project, id: string): Subject | undefined {
  const group = project.groups.find((item) => item.id === id);
  if (group) return { id, parts: group.parts, isGroup: true };
  return project.parts.some((part) => part.id === id)
    ? { id, parts: [id], isGroup: false }
    : undefined;
}

/** Candidates for a part that stand on a day, in order of date. */
export function candidatesOn(
  project: Project,
  part: string,
  day: Day,
): readonly (Candidate & Standing)[] {
  return project.candidates.filter((item) => item.part === part && standsOn(item, day));
}

/**
 * All choices about a part or a group up to a day, the newest first. The newest stands; the others stay listed, with the day they
 * were changed. A choice for a group is one about each of its parts, too.
 */
export function decisionsOn(project: Project, subject: Subject, day: Day): readonly Decision[] {
  const firstId = firstIds(project.corrections);
  const partOf = new Map(project.candidates.map(({ id, part }) => [id, part]));
  const about = project.choices
    .filter((choice) => standsOn(choice, day))
    .map((choice) => ({ choice, candidates: choice.candidates.map(firstId) }))
    .filter(({ choice, candidates }) =>
      subject.isGroup
        ? choice.group === subject.id
        : candidates.some((id) => subject.parts.includes(partOf.get(id) ?? '')),
    );
  return about
    .map((decision, index) => ({ ...decision, changed: about[index + 1]?.choice.date }))
    .reverse();
}

/** Candidates that stand chosen on a day, each with the choice that says so. */
export function chosenOn(project: Project, day: Day): ReadonlyMap<string, Choice> {
  const chosen = new Map<string, Choice>();
  for (const part of new Set(project.candidates.map((candidate) => candidate.part))) {
    const [newest] = decisionsOn(project, { id: part, parts: [part], isGroup: false }, day);
    const id = newest?.candidates.find((item) =>
      project.candidates.some((candidate) => candidate.id === item && candidate.part === part),
    );
    if (newest && id !== undefined) chosen.set(id, newest.choice);
  }
  return chosen;
}

/**
 * The day on which a comparison is shown: that of the choice that stands, as the figures were when it was made, unless a candidate was
 * added or changed since; then the day that is looked at.
 */
export function comparisonDay(project: Project, subject: Subject, day: Day): Day {
  const [newest] = decisionsOn(project, subject, day);
  if (newest === undefined) return day;
  const { date } = newest.choice;
  const later = project.candidates
    .filter(({ part }) => subject.parts.includes(part))
    .flatMap((item) => [item.date, item.since, item.until])
    .some((moved) => moved !== undefined && moved > date && moved <= day);
  return later ? day : date;
}
