import type { View } from '../book/types.ts';
import { wantedOn } from '../parts/wanted.ts';
import { planOn } from '../plan/project-plan.ts';
import type { Day } from '../time/day.ts';

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
export function openPoints(view: View): readonly OpenPoint[] {
  return [...openPhases(view), ...openSpecs(view), ...wantedParts(view), ...holds(view)];
}

function openPhases({ phases }: View): OpenPoint[] {
  return phases
    .filter(({ state }) => state !== 'finished')
    .map(({ phase, state, start }) => ({
      ...{ kind: 'phase', id: phase.id, what: phase.name },
      ...{ why: `phase ${state}`, since: start },
    }));
}

function openSpecs({ specs }: View): OpenPoint[] {
  return specs.flatMap((figures): OpenPoint[] => {
    const { spec, latest, limits, verdict, reached } = figures;
    const point = { kind: 'spec', id: spec.id, what: spec.name, since: latest?.date } as const;
    if (latest === undefined) return [{ ...point, why: 'not measured' }];
    if (limits !== undefined && verdict === undefined)
      return [{ ...point, why: 'no verdict, since its uncertainty is not known' }];
    if (verdict === 'does not meet') return [{ ...point, why: 'does not meet its limits' }];
    if (verdict === 'undecided') return [{ ...point, why: 'undecided: the limit lies inside ± U' }];
    if (reached === undefined || reached === 'reached') return [];
    return [{ ...point, kind: 'target', why: `its target is ${reached}` }];
  });
}

function wantedParts(view: View): OpenPoint[] {
  return wantedOn(view).wanted.map(({ item, since, tries }) => ({
    ...{ kind: 'part', id: item.part.id, what: item.part.name, since },
    why: `wanted, ${tries.value} ${tries.value === 1 ? 'search' : 'searches'} so far`,
  }));
}

function holds(view: View): OpenPoint[] {
  return planOn(view)
    .holds.filter(({ kind }) => kind !== 'part')
    .map(({ id, kind, what, since, expected, overdue }) => ({
      ...{ kind: 'hold', id, what, since, expected },
      why: `${kind === 'wait' ? 'waited for' : 'sent out'}${overdue ? ', overdue' : ''}`,
    }));
}
