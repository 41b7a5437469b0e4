import type { View } from '../book/types.ts';
import { wantedOn } from '../parts/wanted.ts';
import { planOn } from '../plan/project-plan.ts';
import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';

/** Something that is not settled on the day of the dossier. */
export interface OpenPoint {
  readonly kind: 'phase' | 'spec' | 'part' | 'hold' | 'target';
  /** Id of the phase, the spec, or the row. */
  readonly id: string;
  readonly what: string;
  readonly why: string;
  readonly since: Day | undefined;
  /** Day it may be over, when that was said. */
  readonly expected?: Day | undefined;
}

/** All that is open on the view's day: phases, specs without a value or a good verdict, wanted parts, and what is waited for. */
export function openPoints(view: View, { dossier }: Words): readonly OpenPoint[] {
  const { open, rows } = dossier;
  return [
    ...openPhases(view, open, rows.work.states),
    ...openSpecs(view, open),
    ...wantedParts(view, open),
    ...holds(view, open),
  ];
}

type Said = Words['dossier']['open'];

function openPhases(
  { phases }: View,
  open: Said,
  states: Words['dossier']['rows']['work']['states'],
): OpenPoint[] {
  return phases
    .filter(({ state }) => state !== 'finished')
    .map(({ phase, state, start }) => ({
      ...{ kind: 'phase', id: phase.id, what: phase.name },
      ...{ why: open.phase(states[state]), since: start },
    }));
}

function openSpecs({ specs }: View, open: Said): OpenPoint[] {
  return specs.flatMap((figures): OpenPoint[] => {
    const { spec, latest, limits, verdict, reached } = figures;
    const point = { kind: 'spec', id: spec.id, what: spec.name, since: latest?.date } as const;
    if (latest === undefined) return [{ ...point, why: open.notMeasured }];
    if (limits !== undefined && verdict === undefined) return [{ ...point, why: open.noVerdict }];
    if (verdict === 'does not meet') return [{ ...point, why: open.doesNotMeet }];
    if (verdict === 'undecided') return [{ ...point, why: open.undecided }];
    if (reached === undefined || reached === 'reached') return [];
    return [{ ...point, kind: 'target', why: open.target[reached] }];
  });
}

function wantedParts(view: View, open: Said): OpenPoint[] {
  return wantedOn(view).wanted.map(({ item, since, tries }) => ({
    ...{ kind: 'part', id: item.part.id, what: item.part.name, since },
    why: open.wanted(tries.value),
  }));
}

function holds(view: View, open: Said): OpenPoint[] {
  return planOn(view)
    .holds.filter(({ kind }) => kind !== 'part')
    .map(({ id, kind, what, since, expected, overdue }) => {
      const why = kind === 'wait' ? open.waitedFor : open.sentOut;
      return {
        ...{ kind: 'hold', id, what, since, expected },
        why: overdue ? open.overdue(why) : why,
      };
    });
}
