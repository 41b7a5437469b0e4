import type { Change } from './spec-figures.ts';

/** What may be said of a before and after. */
export function changeWords({ changed }: Pick<Change, 'changed'>): string {
  if (changed === undefined) return 'uncertainty not known';
  return changed ? 'changed' : 'no measurable change';
}

/** What readers call the state that a reading was taken in. */
export const readingStates: Readonly<Record<string, string>> = {
  'as-found': 'as found',
  before: 'before',
  after: 'after',
  final: 'final',
};
