import type { Grade } from '../model/kinds.ts';
import type { findingKinds } from '../model/survey-rows.ts';

export type FoundKind = (typeof findingKinds)[number];

/** Findings that a grade's limits speak of; whether a part may have them is for the limits alone to say. */
export const LIMITED: readonly FoundKind[] = ['thin', 'filler', 'perforation'];

const surface = ['wear', 'corrosion'] as const;
const small = [...surface, 'bent', 'leak'] as const;
const large = [...small, 'crack', 'seized'] as const;

/**
 * The scale of a project that has no `grades.yaml`, best first. Its limits are common practice, no source: what is worth
 * keeping is the builder's to say, and how much structure may lack is a qualified person's.
 */
export const ownGrades: readonly Grade[] = [
  {
    id: 'as-made',
    name: 'as made',
    definition: 'As it left its maker. It was looked at and nothing takes anything from it.',
    remainingAtLeast: '95',
    fillerAtMost: '0',
    holesAtMost: '0',
  },
  {
    id: 'light-wear',
    name: 'light wear',
    definition: 'Goes back as it is. Surface rust or wear that cleaning or adjusting deals with.',
    remainingAtLeast: '85',
    fillerAtMost: '0',
    holesAtMost: '0',
    allows: [...surface],
  },
  {
    id: 'worn',
    name: 'worn',
    definition: 'Goes back after small work: a dent dressed, a seal renewed, a thin spot watched.',
    remainingAtLeast: '70',
    fillerAtMost: '5',
    holesAtMost: '0',
    allows: [...small],
  },
  {
    id: 'to-mend',
    name: 'to mend',
    definition:
      'Has to be mended before it goes back: new metal let in, cracks closed. Most stays.',
    remainingAtLeast: '50',
    fillerAtMost: '20',
    holesAtMost: '5',
    allows: [...large],
  },
  {
    id: 'to-rebuild',
    name: 'to rebuild',
    definition: 'More work than a new one of the same; worth it where there is no other.',
    remainingAtLeast: '30',
    fillerAtMost: '50',
    holesAtMost: '25',
    allows: [...large],
  },
  {
    id: 'pattern',
    name: 'for a pattern',
    definition: 'Good for measuring and copying at most, or not there at all.',
  },
];

/** The scale that a project is graded by, best first: its own, or ours. The last grade takes what no other takes. */
export function scaleOf(project: { readonly grades: readonly Grade[] }): readonly Grade[] {
  return project.grades.length > 0 ? project.grades : ownGrades;
}
