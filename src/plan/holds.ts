import type { View } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import type { Wait } from '../model/kinds.ts';
import { addDays, type Day, daysBetween } from '../time/day.ts';

/** Something that holds phases back on a day: a wait that was written down, a part nobody has yet, or parts sent out. */
export interface Hold {
  readonly kind: 'wait' | 'part' | 'preparation';
  /** Id of the row. */
  readonly id: string;
  readonly phases: readonly string[];
  readonly what: string;
  /** What is waited for, of a wait: weather, a person … */
  readonly for: Wait['for'];
  readonly since: Day;
  /** Whole days from that day to the day of the view. */
  readonly days: number;
  /** Day it may end, when that was said. */
  readonly expected: Day | undefined;
  /** The day it was expected has gone by. */
  readonly overdue: boolean;
}

/**
 * What holds open phases back at the end of a view's day. A part or a preparation that a wait names is told by the wait, which says
 * more. Only what was known on the day counts: an end that came later is not known yet.
 */
export function holdsOn(view: View): Hold[] {
  const open = new Set(view.phases.filter(isOpen).map(({ phase }) => phase.id));
  const waits = openWaits(view);
  const named = new Set(waits.flatMap(({ part, preparation }) => [part, preparation]));
  const holds = [
    ...waits.map((wait) => ({
      ...{ kind: 'wait' as const, id: wait.id, phases: [wait.phase], what: wait.what },
      ...{ for: wait.for, since: wait.date, expected: wait.expected },
    })),
    ...wantedParts(view).filter(({ id }) => !named.has(id)),
    ...sentOut(view).filter(({ id }) => !named.has(id)),
  ];
  return holds
    .map((hold) => ({ ...hold, phases: hold.phases.filter((id) => open.has(id)) }))
    .filter(({ phases }) => phases.length > 0)
    .map((hold) => ({
      ...hold,
      days: daysBetween(hold.since, view.day),
      overdue: hold.expected !== undefined && hold.expected < view.day,
    }));
}

/** Wait rows that stand on the day of a view, those that are over too. */
export function waitsOn({ project, day }: View): Project['waits'] {
  return project.waits.filter((wait) => standsOn(wait, day));
}

/** Whether something with an end had not ended by a day. */
export function isOpenOn(end: Day | undefined, day: Day): boolean {
  return end === undefined || end > day;
}

type Project = View['project'];
type Found = Omit<Hold, 'days' | 'overdue'>;

const isOpen = ({ state }: View['phases'][number]) => state !== 'finished';

function openWaits(view: View): Project['waits'] {
  return waitsOn(view).filter(({ ended }) => isOpenOn(ended, view.day));
}

function wantedParts({ parts, day }: View): Found[] {
  return parts.flatMap(({ part, state, since }) => {
    if (part.phase === undefined || (state !== 'wanted' && state !== 'ordered')) return [];
    return {
      ...{ kind: 'part', id: part.id, phases: [part.phase], what: part.name, for: 'part' },
      ...{ since: part.wanted ?? since ?? day, expected: undefined },
    };
  });
}

function sentOut({ project, day }: View): Found[] {
  const phaseOf = new Map(project.parts.map(({ id, phase }) => [id, phase]));
  return project.preparations
    .filter((row) => row.out && standsOn(row, day) && isOpenOn(row.back, day))
    .map(({ id, parts, what, date, due }) => ({
      ...{ kind: 'preparation', id, what, for: 'preparation', since: date, expected: due },
      phases: [...new Set(parts.flatMap((part) => phaseOf.get(part) ?? []))],
    }));
}

/** The first day on which a hold lets work go on: that which was expected, or tomorrow when it is overdue. */
export function endOf({ expected }: Hold, day: Day): Day | undefined {
  if (expected === undefined) return undefined;
  return expected > day ? expected : addDays(day, 1);
}
