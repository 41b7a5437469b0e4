import fc from 'fast-check';
import { expect, test } from 'vitest';
import { earnedOn } from '../../src/plan/project-earned.ts';
import { forecastOn } from '../../src/plan/project-forecast.ts';
import { planOn } from '../../src/plan/project-plan.ts';
import { addDays, type Day } from '../../src/time/day.ts';
import type { Written } from '../book/project-of.ts';
import { plannedProject, weekly } from '../plan/planned-project.ts';
import { told } from '../words/told.ts';

const FIRST = '2025-01-04' as Day;
const day = fc.nat({ max: 120 }).map((days) => addDays(FIRST, days));
const phase = fc.constantFrom('spindle', 'table', 'paint');

const waits = fc
  .array(fc.record({ day, phase, days: fc.nat({ max: 60 }), ends: fc.nat({ max: 60 }) }), {
    maxLength: 5,
  })
  .map((list) =>
    list.map(
      ({ day: date, phase: of, days, ends }, index): Written => ({
        ...{ id: `w-${index}`, date, phase: of, for: 'weather', what: 'Rain' },
        ...{ expected: addDays(date, days), until: addDays(date, ends) },
      }),
    ),
  );

const hours = fc
  .array(fc.record({ day, phase, minutes: fc.integer({ min: 30, max: 480 }) }), { maxLength: 12 })
  .map((list) =>
    list.map(
      ({ day: date, phase: of, minutes }, index): Written => ({
        ...{ id: `h-${index}`, date, hours: `${minutes} min`, phase: of },
        ...{ work: 'fitting', what: 'Worked' },
      }),
    ),
  );

const before = [
  ...weekly('strip', FIRST, ['4:00', '4:00', '4:00']),
  ...weekly('clean', '2025-01-25', ['4:00', '4:00']),
];

/** Rows as they were written at the end of a day: what came later, and the end of what was still going on, is not in them. */
function writtenUpTo(rows: readonly Written[], last: Day): Written[] {
  return rows
    .filter(({ date }) => String(date) <= last)
    .map((row) =>
      Object.fromEntries(
        Object.entries(row).filter(([field, value]) => field !== 'until' || String(value) <= last),
      ),
    );
}

const plan = (view: Parameters<typeof planOn>[0]) => {
  const { holds, waits: known, pace, phases, week } = planOn(view);
  return { holds, known, pace, phases, week };
};

test('a row that is added later never changes the plan, the forecast or the earned value of a day', () => {
  fc.assert(
    fc.property(hours, waits, day, day, (worked, waited, one, other) => {
      const [then, last] = [one, other].sort() as [Day, Day];
      const lists = { hours: [...before, ...worked], waits: waited };
      const early = plannedProject({
        hours: writtenUpTo(lists.hours, last),
        waits: writtenUpTo(waited, last),
      });
      const late = plannedProject(lists);
      expect(plan(late.asOf(then))).toEqual(plan(early.asOf(then)));
      expect(told(forecastOn(late.asOf(then)))).toEqual(told(forecastOn(early.asOf(then))));
      expect(earnedOn(late.asOf(then))).toEqual(earnedOn(early.asOf(then)));
    }),
    { numRuns: 25 },
  );
});

test('taking a wait away never delays the finish', () => {
  const onDay = (waited: readonly Written[]) => {
    const made = plannedProject({ hours: before, waits: waited }).asOf('2025-02-08' as Day);
    const result = forecastOn(made);
    if (result.kind !== 'forecast') throw new Error(`no forecast: ${result.kind}`);
    return result.finish;
  };
  fc.assert(
    fc.property(waits, fc.nat(), (waited, which) => {
      fc.pre(waited.length > 0);
      const all = onDay(waited);
      const fewer = onDay(waited.filter((_, index) => index !== which % waited.length));
      expect(fewer.low).toBeLessThanOrEqual(all.low);
      expect(fewer.middle).toBeLessThanOrEqual(all.middle);
      expect(fewer.high).toBeLessThanOrEqual(all.high);
    }),
    { numRuns: 25 },
  );
});
