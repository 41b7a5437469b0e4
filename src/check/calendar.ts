import { problemAt } from '../read/problem.ts';
import { showDuration } from '../time/duration.ts';
import type { Rule } from './rule.ts';

const DAY = 24 * 60;

/** No weekday has more than 24 hours, and days away end no earlier than they begin. */
export const calendarIsPossible: Rule = ({ project: { info } }) => {
  if (info === undefined) return [];
  const { week = {}, away = [] } = info.value;
  const long = Object.entries(week).flatMap(([weekday, minutes]) =>
    minutes === undefined || minutes <= DAY
      ? []
      : problemAt(
          info.raw.placeOf(['week', weekday]),
          'project/week',
          `${weekday}: "${showDuration(minutes)}" is more than a day has`,
          'write 24:00 at the most',
        ),
  );
  const turned = away.flatMap(({ from, to }, index) =>
    to >= from
      ? []
      : problemAt(
          info.raw.placeOf(['away', index, 'to']),
          'date/order',
          `to: "${to}" is before from (${from})`,
          'swap them, or correct the wrong one',
        ),
  );
  return [...long, ...turned];
};
