import type { Project } from '../book/types.ts';
import type { Source } from '../model/kinds.ts';
import { type Money, sum } from '../money/money.ts';
import type { Minutes } from '../time/duration.ts';
import { type Weighed, type Weighing, weighCandidates } from './candidates.ts';
import type { Subject } from './choices.ts';

/** A way to get all parts of a group: every part from one source, or as it was chosen. */
export interface GroupWay {
  /** The source; undefined for the way that was chosen. */
  readonly source: Source | undefined;
  readonly members: readonly Weighed[];
  /** Parts of the group that this way has nothing for. */
  readonly without: readonly string[];
  /** Sums over the members; undefined where one of them does not know its own. */
  readonly money: Money | undefined;
  readonly hours: Minutes | undefined;
  readonly together: Money | undefined;
}

/** A group's candidates added up by source, and the chosen ones added up last. */
export function groupWays(
  project: Project,
  { parts }: Subject,
  weighing: Weighing,
): readonly GroupWay[] {
  const byPart = parts.map((part) => ({ part, all: weighCandidates(project, part, weighing) }));
  const wayOf = (
    source: Source | undefined,
    pick: (all: readonly Weighed[]) => Weighed | undefined,
  ) => {
    const picked = byPart.map(({ part, all }) => ({ part, weighed: pick(all) }));
    const members = picked.flatMap(({ weighed }) => weighed ?? []);
    const without = picked.flatMap(({ part, weighed }) => (weighed ? [] : [part]));
    return { source, members, without, ...sumsOf(members, project.currency) };
  };
  const bySource = project.sources
    .map((source) => wayOf(source, (all) => ofSource(all, source.id)))
    .filter(({ members }) => members.length > 0);
  const chosen = wayOf(undefined, (all) => all.find((weighed) => weighed.chosen));
  return chosen.members.length > 0 ? [...bySource, chosen] : bySource;
}

/** Of several from one source the chosen one counts, else the one noted first. */
function ofSource(all: readonly Weighed[], source: string): Weighed | undefined {
  const own = all.filter(({ candidate }) => candidate.source === source);
  return own.find(({ chosen }) => chosen) ?? own[0];
}

function sumsOf(members: readonly Weighed[], currency: string) {
  const all = <Value>(values: readonly (Value | undefined)[]): readonly Value[] | undefined =>
    values.includes(undefined) ? undefined : (values as readonly Value[]);
  const money = all(members.map(({ cost }) => cost.money));
  const hours = all(members.map(({ candidate }) => candidate.hours));
  const together = all(members.map((member) => member.together));
  return {
    money: money && sum(money, currency),
    hours: hours?.reduce((total, minutes) => total + minutes, 0),
    together: together && sum(together, currency),
  };
}
