import type { Words } from '../words/words.ts';
import type { ChainStep } from './chain-step.ts';
import type { Place } from './whereabouts.ts';

/** Where a part is, as it is printed: `sent out for blasting`. */
export function whereText(place: Place, { parts }: Words): string {
  const { where } = parts.part;
  switch (place.at) {
    case 'gone':
      return where.gone(parts.states[place.state]);
    case 'sent out':
      return where.sentOut(parts.preparations.kinds[place.kind]);
    case 'shelf':
      return place.forSale ? where.shelfForSale : where.shelf;
    case 'noted':
      return place.machine === undefined ? where.noted : where.stillOn(place.machine);
    default:
      return where[place.at];
  }
}

/** What stands beside a step: the builder's words, `on The donor`, or `blasting: casing and backplates`. */
export function stepNote(
  { what, note, preparation }: Pick<ChainStep, 'what' | 'note' | 'preparation'>,
  { parts }: Words,
): string | undefined {
  const { notes } = parts.part;
  if (what === 'found-by-survey') return notes.foundBySurvey;
  if (note === undefined) return undefined;
  if (what === 'found-on') return notes.foundOn(note);
  return preparation ? notes.prepared(parts.preparations.kinds[preparation], note) : note;
}
