import { addDays, type Day, showShortDay } from '../time/day.ts';
import { across, node, type SvgNode } from './svg.ts';

/** A place of the axis that has a name. */
export interface NamedDay {
  readonly day: Day;
  readonly name: string;
}

// Five names are as many as 360 pixels hold side by side.
const MOST_NAMES = 5;
const STEPS = [1, 2, 3, 6, 12, 24, 60, 120, 240];

/** First days of months, quarters or years inside a span, as fine as there is room to name; of a short span its first day. */
export function namedDays(from: Day, to: Day, language: string): NamedDay[] {
  const first = monthOf(from) + (from.endsWith('-01') ? 0 : 1);
  const last = monthOf(to);
  if (last < first) return [{ day: from, name: showShortDay(from, language) }];

  const countBy = (step: number) => Math.floor(last / step) - Math.ceil(first / step) + 1;
  const step = STEPS.find((months) => countBy(months) <= MOST_NAMES) ?? 1200;
  const format = new Intl.DateTimeFormat(language, {
    timeZone: 'UTC',
    ...(step >= 12 ? { year: 'numeric' } : { month: 'short', year: '2-digit' }),
  });
  const named: NamedDay[] = [];
  for (let month = Math.ceil(first / step) * step; month <= last; month += step) {
    const day = firstOf(month);
    named.push({ day, name: format.format(new Date(day)) });
  }
  return named;
}

/** A line of names above some rows; a name that would run off the sheet is left out. */
export function nameDays(
  named: readonly NamedDay[],
  y: number,
  place: (day: Day) => number,
): SvgNode[] {
  return named
    .filter(({ day }) => place(day) <= 92)
    .map(({ day, name }) =>
      node(
        'text',
        {
          x: across(place(day)),
          y,
          class: 'small',
          'text-anchor': place(day) < 8 ? 'start' : 'middle',
        },
        name,
      ),
    );
}

/** Months since the year 0. */
function monthOf(day: Day): number {
  return Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1;
}

function firstOf(month: number): Day {
  const year = String(Math.floor(month / 12)).padStart(4, '0');
  return addDays(`${year}-${String((month % 12) + 1).padStart(2, '0')}-01` as Day, 0);
}
