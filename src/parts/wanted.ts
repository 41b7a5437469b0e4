import type { PartOnDay, View } from '../book/types.ts';
import { type Day, latestDay } from '../time/day.ts';
import { type Hunt, huntsOn } from './hunt.ts';

/** A part that is for sale. */
export interface Offer {
  readonly item: PartOnDay;
  readonly since: Day;
}

/** What a reader may have, and what a reader may want. */
export interface WantedList {
  readonly wanted: readonly Hunt[];
  readonly offers: readonly Offer[];
}

/** Parts still looked for and parts for sale on the view's day, those that wait longest first. */
export function wantedOn(view: View): WantedList {
  const offers = view.parts.flatMap((item): Offer[] => {
    const since = item.part.forSale;
    const isHere = item.state === 'noted' || item.state === 'in-hand';
    return isHere && since !== undefined && since <= view.day ? [{ item, since }] : [];
  });
  return {
    wanted: huntsOn(view).hunts.filter(({ found, item }) => found === undefined && !isGone(item)),
    offers: offers.sort((a, b) => (a.since < b.since ? -1 : 1)),
  };
}

function isGone({ state }: PartOnDay): boolean {
  return state === 'sold' || state === 'scrapped';
}

/** Day of the newest thing that is known of a hunt: the day it was wanted, or a search. */
export function newestOf({ since, item, tries }: Hunt): Day {
  const wanted = item.since ?? since;
  return latestDay([since, wanted, ...tries.rows.map(({ date }) => date)]) ?? since;
}
