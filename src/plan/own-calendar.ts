import type { View } from '../book/types.ts';
import type { ProjectInfo } from '../model/kinds.ts';
import { type CalendarPlan, type WorkingCalendar, workingCalendar } from './calendar.ts';
import { dayNumber, weekdayOf } from './day-number.ts';

/** Weeks that the pace, and a pattern of the week that nobody wrote down, are taken from. */
export const WEEKS = 12;

/** A project's working calendar, and where its week comes from. */
export interface OwnCalendar {
  readonly calendar: WorkingCalendar;
  readonly week: CalendarPlan['week'];
  /** Written down in the project file, or the average of the last weeks. */
  readonly from: 'project' | 'last weeks';
}

/** The working calendar on the day of a view. */
export function calendarOn(view: View): OwnCalendar {
  const { week: written, away = [] } = view.project.info;
  const week = written ? weekOf(written) : averageWeek(view);
  const ranges = away.map(({ from, to }) => ({ from: dayNumber(from), to: dayNumber(to) }));
  return {
    calendar: workingCalendar({ week, away: ranges, changed: [] }),
    week,
    from: written ? 'project' : 'last weeks',
  };
}

function weekOf(week: NonNullable<ProjectInfo['week']>): CalendarPlan['week'] {
  const { monday, tuesday, wednesday, thursday, friday, saturday, sunday } = week;
  return [
    monday ?? 0,
    tuesday ?? 0,
    wednesday ?? 0,
    thursday ?? 0,
    friday ?? 0,
    saturday ?? 0,
    sunday ?? 0,
  ];
}

function averageWeek({ hours, day }: View): CalendarPlan['week'] {
  const last = dayNumber(day);
  const week: [number, number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0, 0];
  for (const row of hours) {
    const number = dayNumber(row.date);
    const weekday = weekdayOf(number);
    if (number > last - 7 * WEEKS) week[weekday] = (week[weekday] ?? 0) + row.hours / WEEKS;
  }
  return week;
}
