import { problemAt } from '../read/problem.ts';
import { showDuration } from '../time/duration.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

const MINUTES_IN_A_DAY = 24 * 60;

/** Nobody works more than 24 hours in a day. The row that goes over is the one named. */
export const daysHave24Hours: Rule = ({ project }) => {
  const firstPerson = project.info?.value.people[0]?.id ?? '';
  const worked = new Map<string, number>();
  return standingRows(project, 'hours').flatMap(({ raw, value }) => {
    const who = value.who ?? firstPerson;
    const key = `${value.date} ${who}`;
    const total = (worked.get(key) ?? 0) + value.hours;
    worked.set(key, total);
    if (total <= MINUTES_IN_A_DAY) return [];
    const message = `hours: with "${showDuration(value.hours)}" the day ${value.date} has ${showDuration(total)} hours for "${who}"`;
    return [
      problemAt(
        raw.placeOf(['hours']),
        'hours/over-24',
        message,
        'correct the hours, the date or the person',
      ),
    ];
  });
};
