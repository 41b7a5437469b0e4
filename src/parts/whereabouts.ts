import type { PartRow, View } from '../book/types.ts';
import type { Day } from '../time/day.ts';
import type { PreparationOnDay } from './preparations.ts';
import { stateOn } from './state.ts';

/** Where a part is on a day. The place of work sent out is private. */
export interface Whereabouts {
  readonly at: 'gone' | 'sent out' | 'machine' | 'shelf' | 'ordered' | 'wanted' | 'noted';
  /** In words: `sent out for blasting since …` is put together on the page from these. */
  readonly words: string;
  readonly since: Day | undefined;
  /** What is being done to it, here or elsewhere. */
  readonly preparation: PreparationOnDay | undefined;
}

/** Where a part is: what is gone is gone, what was sent out is out, whatever was written of it before. */
export function whereaboutsOf(
  part: PartRow,
  preparations: readonly PreparationOnDay[],
  { day, project }: View,
): Whereabouts {
  const state = stateOn(part, day);
  const open = preparations.findLast(({ back }) => back === undefined);
  const make = (at: Whereabouts['at'], words: string, since: Day | undefined): Whereabouts => ({
    at,
    words,
    since,
    preparation: at === 'gone' ? undefined : open,
  });
  if (state === 'sold' || state === 'scrapped') return make('gone', `gone: ${state}`, part[state]);
  if (open?.row.out) return make('sent out', `sent out for ${open.row.kind}`, open.row.date);
  switch (state) {
    case 'fitted':
      return make('machine', 'on the machine', part.fitted);
    case 'in-hand':
      return part.forSale !== undefined && part.forSale <= day
        ? make('shelf', 'on the shelf, for sale', part.forSale)
        : make('shelf', 'on the shelf', part.got);
    case 'ordered':
      return make('ordered', 'ordered', part.ordered);
    case 'wanted':
      return make('wanted', 'wanted', part.wanted);
    default: {
      const machine = project.sources.find(({ id }) => id === part.source);
      const came = machine?.acquired;
      return came !== undefined && came <= day
        ? make('noted', `still on ${machine?.name}`, came)
        : make('noted', 'noted', undefined);
    }
  }
}
