import type { PartRow, View } from '../book/types.ts';
import type { Day } from '../time/day.ts';
import type { PreparationKind, PreparationOnDay } from './preparations.ts';
import { stateOn } from './state.ts';

/** Where a part can be. The place of work sent out is private. */
export type Place =
  | { readonly at: 'gone'; readonly state: 'sold' | 'scrapped' }
  | { readonly at: 'sent out'; readonly kind: PreparationKind }
  | { readonly at: 'shelf'; readonly forSale: boolean }
  | { readonly at: 'machine' | 'ordered' | 'wanted' }
  | { readonly at: 'noted'; readonly machine: string | undefined };

/** Where a part is on a day. */
export type Whereabouts = Place & {
  readonly since: Day | undefined;
  /** What is being done to it, here or elsewhere. */
  readonly preparation: PreparationOnDay | undefined;
};

/** Where a part is: what is gone is gone, what was sent out is out, whatever was written of it before. */
export function whereaboutsOf(
  part: PartRow,
  preparations: readonly PreparationOnDay[],
  { day, project }: View,
): Whereabouts {
  const state = stateOn(part, day);
  const open = preparations.findLast(({ back }) => back === undefined);
  const make = (place: Place, since: Day | undefined): Whereabouts => ({
    ...place,
    since,
    preparation: place.at === 'gone' ? undefined : open,
  });
  if (state === 'sold' || state === 'scrapped') return make({ at: 'gone', state }, part[state]);
  if (open?.row.out) return make({ at: 'sent out', kind: open.row.kind }, open.row.date);
  switch (state) {
    case 'fitted':
      return make({ at: 'machine' }, part.fitted);
    case 'in-hand': {
      const forSale = part.forSale !== undefined && part.forSale <= day;
      return make({ at: 'shelf', forSale }, forSale ? part.forSale : part.got);
    }
    case 'ordered':
      return make({ at: 'ordered' }, part.ordered);
    case 'wanted':
      return make({ at: 'wanted' }, part.wanted);
    default: {
      const machine = project.sources.find(({ id }) => id === part.source);
      const came = machine?.acquired;
      return came !== undefined && came <= day
        ? make({ at: 'noted', machine: machine?.name }, came)
        : make({ at: 'noted', machine: undefined }, undefined);
    }
  }
}
