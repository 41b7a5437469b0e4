import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CalendarPlan, workingCalendar } from '../../src/plan/calendar.ts';
import { dayOfNumber } from '../../src/plan/day-number.ts';
import { calendarPlans, evenings, numberOf, someDay } from '../plan/calendars.ts';

// Temporal (ECMA-262 proposal) counts days by itself; the slow way, one day after another. Node 24 has it behind a flag.
const SCRIPT = `
const { compare, from } = Temporal.PlainDate;
const within = (day, range) => compare(from(range.from), day) <= 0 && compare(day, from(range.to)) <= 0;
function minutesOn({ week, away, changed }, day) {
  const other = changed.findLast((one) => from(one.day).equals(day));
  if (other) return other.minutes;
  return away.some((range) => within(day, range)) ? 0 : week[day.dayOfWeek - 1];
}
function walk(plan, day, step, minutes) {
  for (let left = minutes, days = 0; days < 3000; days++, day = day.add({ days: step })) {
    left -= minutesOn(plan, day);
    if (left <= 0) return day.toString();
  }
}
function answer({ plan, start, end, minutes }) {
  let between = 0;
  for (let day = from(start); compare(day, from(end)) < 0; day = day.add({ days: 1 })) between += minutesOn(plan, day);
  return { between, finish: walk(plan, from(start), 1, minutes), begin: walk(plan, from(end), -1, minutes) };
}
const asked = JSON.parse(require('node:fs').readFileSync(0, 'utf8'));
process.stdout.write(JSON.stringify(asked.map(answer)));
`;

interface Asked {
  readonly plan: CalendarPlan;
  readonly start: number;
  readonly end: number;
  readonly minutes: number;
}

interface Answer {
  readonly between: number;
  readonly finish?: string;
  readonly begin?: string;
}

const run = (script: string, input: string) =>
  spawnSync(process.execPath, ['--harmony-temporal', '-e', script], { input, encoding: 'utf8' });

function ask(cases: readonly Asked[]): Answer[] {
  const named = cases.map(({ plan, start, end, minutes }) => ({
    plan: {
      ...plan,
      away: plan.away.map(({ from, to }) => ({ from: dayOfNumber(from), to: dayOfNumber(to) })),
      changed: plan.changed.map((one) => ({ ...one, day: dayOfNumber(one.day) })),
    },
    start: dayOfNumber(start),
    end: dayOfNumber(end),
    minutes,
  }));
  const { status, stdout, stderr } = run(SCRIPT, JSON.stringify(named));
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Answer[];
}

const present = run('Temporal.PlainDate.from("2025-01-01")', '').status === 0;
const ABSENT = 'this Node has no Temporal, not even behind --harmony-temporal';

function compare({ plan, start, end, minutes }: Asked, theirs: Answer | undefined): void {
  const calendar = workingCalendar(plan);
  const day = (number: number | undefined) =>
    number === undefined ? undefined : dayOfNumber(number);
  expect(calendar.minutesBetween(start, end)).toBe(theirs?.between);
  expect(day(calendar.finishOf(start, minutes))).toBe(theirs?.finish);
  expect(day(calendar.startOf(end, minutes))).toBe(theirs?.begin);
}

const asked: fc.Arbitrary<Asked> = fc.record({
  // A week with no time in it is left to the changed days alone; such a walk would have no end.
  plan: calendarPlans.filter(({ week }) => week.some((minutes) => minutes > 0)),
  start: someDay,
  end: fc.integer({ min: 0, max: 400 }),
  minutes: fc.integer({ min: 0, max: 9000 }),
});

describe('Temporal, day by day', () => {
  test('finds the same minutes, finishes and starts', ({ skip }) => {
    skip(!present, ABSENT);
    const cases = fc
      .sample(asked, { numRuns: 150, seed: 5 })
      .map((one) => ({ ...one, end: one.start + one.end }));
    const answers = ask(cases);
    for (const [index, one] of cases.entries()) compare(one, answers[index]);
  });

  test('would catch a day away that is worked', ({ skip }) => {
    skip(!present, ABSENT);
    const day = numberOf('2028-02-29');
    const one = { plan: evenings, start: day - 1, end: day + 7, minutes: 480 };
    const away = { ...one, plan: { ...evenings, away: [{ from: day, to: day }] } };
    const [theirs] = ask([away]);
    expect(() => compare(away, theirs)).not.toThrow();
    expect(() => compare(one, theirs)).toThrow();
  });
});
