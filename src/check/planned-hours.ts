import { problemAt } from '../read/problem.ts';
import { showDuration } from '../time/duration.ts';
import type { Rule } from './rule.ts';

/** Planned hours lie between the least and the most that were given with them. */
export const plannedHoursAreInOrder: Rule = ({ project }) =>
  project.lists.phases.flatMap(({ raw, value }) => {
    const { plannedHours: likely, plannedHoursLeast: least, plannedHoursMost: most } = value;
    const wrong = (field: string, minutes: number, side: 'more' | 'less') =>
      problemAt(
        raw.placeOf([field]),
        'phase/planned-hours',
        `${field}: "${showDuration(minutes)}" is ${side} than planned-hours (${showDuration(likely)})`,
        `swap them, or write "${field}: ${showDuration(likely)}"`,
      );
    return [
      ...(least !== undefined && least > likely
        ? [wrong('planned-hours-least', least, 'more')]
        : []),
      ...(most !== undefined && most < likely ? [wrong('planned-hours-most', most, 'less')] : []),
    ];
  });
