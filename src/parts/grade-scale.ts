import type { Grade } from '../model/kinds.ts';
import type { findingKinds } from '../model/survey-rows.ts';
import { survey } from '../words/en/parts/survey.ts';

export type FoundKind = (typeof findingKinds)[number];

/** Findings that a grade's limits speak of; whether a part may have them is for the limits alone to say. */
export const LIMITED: readonly FoundKind[] = ['thin', 'filler', 'perforation'];

const surface = ['wear', 'corrosion'] as const;
const small = [...surface, 'bent', 'leak'] as const;
const large = [...small, 'crack', 'seized'] as const;

type OwnGrade = Grade & { readonly id: keyof typeof survey.grades };

/** Names and definitions in English; pages print those of their own language. */
const named = survey.grades;

/**
 * The scale of a project that has no `grades.yaml`, best first. Its limits are common practice, no source: what is worth
 * keeping is the builder's to say, and how much structure may lack is a qualified person's.
 */
export const ownGrades: readonly Grade[] = [
  {
    id: 'as-made',
    ...named['as-made'],
    remainingAtLeast: '95',
    fillerAtMost: '0',
    holesAtMost: '0',
  },
  {
    id: 'light-wear',
    ...named['light-wear'],
    remainingAtLeast: '85',
    fillerAtMost: '0',
    holesAtMost: '0',
    allows: [...surface],
  },
  {
    id: 'worn',
    ...named.worn,
    remainingAtLeast: '70',
    fillerAtMost: '5',
    holesAtMost: '0',
    allows: [...small],
  },
  {
    id: 'to-mend',
    ...named['to-mend'],
    remainingAtLeast: '50',
    fillerAtMost: '20',
    holesAtMost: '5',
    allows: [...large],
  },
  {
    id: 'to-rebuild',
    ...named['to-rebuild'],
    remainingAtLeast: '30',
    fillerAtMost: '50',
    holesAtMost: '25',
    allows: [...large],
  },
  {
    id: 'pattern',
    ...named.pattern,
  },
] satisfies readonly OwnGrade[];

/** The scale that a project is graded by, best first: its own, or ours. The last grade takes what no other takes. */
export function scaleOf(project: { readonly grades: readonly Grade[] }): readonly Grade[] {
  return project.grades.length > 0 ? project.grades : ownGrades;
}

/** Whether a grade is one of our own scale, so that its words are ours, too. */
export function isOwnGrade(grade: Grade): grade is OwnGrade {
  return ownGrades.some((own) => own === grade);
}
