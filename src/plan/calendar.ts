import { type DayNumber, weekdayOf } from './day-number.ts';

/** A stretch of days, both ends included. */
export interface DayRange {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

/** When there is time to work: a week's pattern, and what is different. */
export interface CalendarPlan {
  /** Minutes of work on Monday to Sunday. */
  readonly week: readonly [number, number, number, number, number, number, number];
  /** Days with no work; stretches may overlap. */
  readonly away: readonly DayRange[];
  /** Single days with other minutes; they win over the pattern and over being away. */
  readonly changed: readonly { readonly day: DayNumber; readonly minutes: number }[];
}

/** A calendar that answers in the same time for a week and for decades. */
export interface WorkingCalendar {
  /** Minutes of an undisturbed week. */
  readonly weekMinutes: number;
  minutesOn(day: DayNumber): number;
  /** Minutes of work from the start of one day to the start of another; negative when `to` is earlier. */
  minutesBetween(from: DayNumber, to: DayNumber): number;
  /** The day on which so many minutes, begun at the start of a day, are done; undefined when they never are. */
  finishOf(start: DayNumber, minutes: number): DayNumber | undefined;
  /** The latest day to begin so that so many minutes are done by the end of a day; undefined when there is none. */
  startOf(finish: DayNumber, minutes: number): DayNumber | undefined;
}

// No plan reaches further than some three thousand years.
const FURTHEST = 2 ** 20;

/** Prepares a calendar; days that differ from the week's pattern are kept as sums, so no question walks day by day. */
export function workingCalendar({ week, away, changed }: CalendarPlan): WorkingCalendar {
  const upToWeekday = runningSums(week);
  const weekMinutes = upToWeekday[7] ?? 0;
  const ranges = mergeRanges(away);
  const isAway = (day: DayNumber) => {
    const range = ranges[countUpTo(ranges, ({ from }) => from <= day) - 1];
    return range !== undefined && day <= range.to;
  };
  const others = [...new Map(changed.map(({ day, minutes }) => [day, minutes]))].sort(
    ([one], [other]) => one - other,
  );

  const awaySums = runningSums(ranges.map(({ from, to }) => pattern(to + 1) - pattern(from)));
  const otherSums = runningSums(
    others.map(([day, minutes]) => minutes - (isAway(day) ? 0 : (week[weekdayOf(day)] ?? 0))),
  );

  /** Minutes of the pattern from Monday, 1969-12-29, to the start of a day. */
  function pattern(day: DayNumber): number {
    return Math.floor((day + 3) / 7) * weekMinutes + (upToWeekday[weekdayOf(day)] ?? 0);
  }

  function before(day: DayNumber): number {
    const begun = countUpTo(ranges, ({ from }) => from < day);
    const last = ranges[begun - 1];
    const unfinished = last && last.to >= day ? pattern(last.to + 1) - pattern(day) : 0;
    const passed = countUpTo(others, ([other]) => other < day);
    return pattern(day) - (awaySums[begun] ?? 0) + unfinished + (otherSums[passed] ?? 0);
  }

  const minutesBetween = (from: DayNumber, to: DayNumber) => before(to) - before(from);
  const least = (reaches: (days: number) => boolean) => firstThat(reaches, FURTHEST);
  return {
    weekMinutes,
    minutesOn: (day) => minutesBetween(day, day + 1),
    minutesBetween,
    finishOf: (start, minutes) => {
      const days = least((count) => minutesBetween(start, start + count + 1) >= minutes);
      return days === undefined ? undefined : start + days;
    },
    startOf: (finish, minutes) => {
      const days = least((count) => minutesBetween(finish - count, finish + 1) >= minutes);
      return days === undefined ? undefined : finish - days;
    },
  };
}

/** 0 and then the sum of the first one, two, three … numbers. */
function runningSums(numbers: readonly number[]): number[] {
  const sums = [0];
  for (const number of numbers) sums.push((sums.at(-1) ?? 0) + number);
  return sums;
}

function mergeRanges(ranges: readonly DayRange[]): DayRange[] {
  const merged: DayRange[] = [];
  for (const range of ranges.toSorted((one, other) => one.from - other.from)) {
    const last = merged.at(-1);
    if (range.to < range.from) continue;
    if (last === undefined || range.from > last.to + 1) merged.push(range);
    else merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, range.to) };
  }
  return merged;
}

/** How many items at the head of a sorted list pass a test that only a head passes. */
function countUpTo<Item>(items: readonly Item[], passes: (item: Item) => boolean): number {
  let [low, high] = [0, items.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (passes(items[middle] as Item)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The least whole number from 0 on that passes a test which all larger ones pass too; undefined when none up to `most` does. */
function firstThat(passes: (number: number) => boolean, most: number): number | undefined {
  let high = 1;
  while (!passes(high - 1)) {
    if (high > most) return undefined;
    high *= 2;
  }
  let low = high >> 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (passes(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
