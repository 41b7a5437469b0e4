import type { Words } from '../words/words.ts';
import type { Change } from './spec-figures.ts';

/** What may be said of a before and after. */
export function changeWords({ changed }: Pick<Change, 'changed'>, { measure }: Words): string {
  if (changed === undefined) return measure.change.unknown;
  return changed ? measure.change.changed : measure.change.none;
}
