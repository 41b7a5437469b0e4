import type { Project } from '../../src/book/types.ts';
import { addDays, type Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

type PhaseDays = readonly [id: string, start: string, finish: string];

/** A phase of ten hours; what differs comes last. */
export function plannedPhase([id, start, finish]: PhaseDays, rest: Written = {}): Written {
  return {
    ...{ id, name: `Phase ${id}`, summary: 'Work.' },
    ...{ 'planned-start': start, 'planned-finish': finish, 'planned-hours': '10:00' },
    ...rest,
  };
}

/** Hours on every seventh day from a first one, the same each time. */
export function weekly(phase: string, first: string, hours: readonly string[]): Written[] {
  return hours.map((length, index) => ({
    id: `h-${phase}-${index}`,
    date: addDays(first as Day, 7 * index),
    hours: length,
    ...{ phase, work: 'fitting', what: 'Worked' },
  }));
}

/**
 * A drill press on Saturdays of 2025: strip took 12 of 10 h and clean 8 of 10 h, both finished; spindle has 2 of its 10 h, table and
 * paint are not begun. Four hours a week, 8 weeks from 4 January on, then two.
 */
export function plannedProject(
  lists: Parameters<typeof projectOf>[0]['lists'] = {},
  project: Written = {},
): Project {
  return projectOf({
    project: { week: { saturday: '4:00' }, ...project },
    lists: {
      phases: [
        plannedPhase(['strip', '2025-01-04', '2025-01-18'], { finished: '2025-01-18' }),
        plannedPhase(['clean', '2025-01-19', '2025-02-01'], {
          after: ['strip'],
          finished: '2025-02-01',
        }),
        plannedPhase(['spindle', '2025-02-02', '2025-02-22'], { after: ['clean'] }),
        plannedPhase(['table', '2025-02-02', '2025-02-15'], { after: ['clean'] }),
        plannedPhase(['paint', '2025-02-23', '2025-03-08'], { after: ['spindle', 'table:+3'] }),
      ],
      hours: [
        ...weekly('strip', '2025-01-04', ['4:00', '4:00', '4:00']),
        ...weekly('clean', '2025-01-25', ['4:00', '4:00']),
        ...weekly('spindle', '2025-02-08', ['2:00']),
      ],
      sources: [{ id: 'new', kind: 'new', name: 'New' }],
      ...lists,
    },
  });
}

export const asDay = (text: string) => text as Day;
