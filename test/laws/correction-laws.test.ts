import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addedSince } from '../../src/book/added.ts';
import { effectOf } from '../../src/book/effect.ts';
import type { Project } from '../../src/book/types.ts';
import { costsByShare, runningTotals } from '../../src/cost/costs.ts';
import { addDays, type Day } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { correctedRows, type Lists, writtenDownBy } from './corrected-rows.ts';
import { writtenDay } from './written-rows.ts';

const rules = fc.record({
  tools: fc.constantFrom('in', 'out', '40 %'),
  gifts: fc.constantFrom('in', 'out'),
  trades: fc.constantFrom('in', 'out'),
});
const entries = fc.array(writtenDay, { minLength: 1, maxLength: 5 }).map((days) =>
  days.map((date, index): Written => {
    return { title: `Entry ${index}`, date, phase: 'strip', summary: 'Something was done.' };
  }),
);
const spent = (project: Project, day: Day) => project.asOf(day).costsByCategory.total.value.minor;
const worked = (project: Project, day: Day) => project.asOf(day).hoursByPhase.total.value;
const total = (sizes: readonly number[]) => sizes.reduce((all, size) => all + size, 0);

/** What a reader can see of a day, without the day that a row would be replaced. */
function seenOn(project: Project, day: Day) {
  const { hoursByPhase, costsByCategory, costsByPhase, costs, specs } = project.asOf(day);
  const groups = (breakdown: typeof costsByCategory) =>
    breakdown.groups.map(({ key, figure }) => [key, figure.value.minor]);
  return {
    hours: hoursByPhase.groups.map(({ key, figure }) => [key, figure.value]),
    money: [groups(costsByCategory), groups(costsByPhase)],
    rows: costs.map(({ id, counted }) => [id, counted.minor]),
    read: specs.map(({ history }) => history.map(({ date, value }) => [date, value])),
  };
}

test('every breakdown of money has the one total, on every day', () => {
  fc.assert(
    fc.property(correctedRows, rules, writtenDay, (lists, some, day) => {
      const project = projectOf({ lists, project: { rules: some } });
      const { costs, costsByCategory, costsByPhase, costsBySource } = project.asOf(day);
      const byPart = costsByShare(costs, project.currency, {
        ...{ sharesIn: ({ parts }) => parts, nameOf: (id: string) => id, order: [] },
      });
      for (const { groups, total: all } of [costsByCategory, costsByPhase, costsBySource, byPart]) {
        expect(total(groups.map(({ figure }) => figure.value.minor))).toBe(all.value.minor);
        expect(all.value).toEqual(costsByCategory.total.value);
      }
    }),
  );
});

test('what a row counts for and what is for other machines is the whole row, and its shares are what counts', () => {
  fc.assert(
    fc.property(correctedRows, rules, (lists, some) => {
      for (const row of projectOf({ lists, project: { rules: some } }).costs) {
        if (row.rate === undefined)
          expect(row.counted.minor + row.elsewhere.minor).toBe(row.paid.minor);
        for (const shares of [row.phases, row.parts])
          if (shares.length > 0)
            expect(total(shares.map(({ money }) => money.minor))).toBe(row.counted.minor);
      }
    }),
  );
});

test('totals do not depend on the order of rows or files', () => {
  fc.assert(
    fc.property(correctedRows, writtenDay, fc.infiniteStream(fc.nat()), (lists, day, order) => {
      const shuffled: Lists = Object.fromEntries(
        Object.entries(lists).map(([kind, rows]) => [
          kind,
          ['phases', 'specs'].includes(kind)
            ? rows
            : rows
                .map((row) => ({ row, place: order.next().value ?? 0 }))
                .sort((a, b) => a.place - b.place)
                .map(({ row }) => row),
        ]),
      );
      const [one, other] = [projectOf({ lists }), projectOf({ lists: shuffled })];
      for (const at of [day, one.lastDay]) {
        expect(spent(other, at)).toBe(spent(one, at));
        expect(worked(other, at)).toBe(worked(one, at));
      }
      expect(other.corrections).toEqual(one.corrections);
    }),
  );
});

test('what is written down later never changes what was seen on a day before', () => {
  fc.assert(
    fc.property(correctedRows, writtenDay, writtenDay, (lists, one, other) => {
      const [day, last] = [one, other].sort() as [Day, Day];
      const then = projectOf({ lists: writtenDownBy(lists, last) });
      expect(seenOn(projectOf({ lists }), day)).toEqual(seenOn(then, day));
    }),
  );
});

test('what entries added is, all together, the total on the day of the last', () => {
  fc.assert(
    fc.property(correctedRows, entries, (lists, written) => {
      const project = projectOf({ lists, entries: written });
      const added = project.entries.map((entry) =>
        addedSince(project.asOf(entry.date), entry, wordsOf('en')),
      );
      const day = project.entries.at(-1)?.date ?? project.lastDay;
      expect(total(added.map(({ costs }) => costs.value.minor))).toBe(spent(project, day));
      expect(total(added.map(({ hours }) => hours.value))).toBe(worked(project, day));
      expect(total(added.map(({ readings }) => readings.value))).toBe(
        added.at(-1)?.allReadings.value,
      );
    }),
  );
});

test('the running total of all rows ends at the total of now', () => {
  fc.assert(
    fc.property(correctedRows, (lists) => {
      const project = projectOf({ lists });
      const last = runningTotals(project.costs, project.currency).at(-1)?.total.minor ?? 0;
      expect(last).toBe(spent(project, project.lastDay));
    }),
  );
});

test('the effect of a correction is what the totals of its day and of the day before differ by', () => {
  fc.assert(
    fc.property(correctedRows, (lists) => {
      const project = projectOf({ lists });
      for (const correction of project.corrections) {
        const { on } = correction;
        const alone = project.corrections.filter((other) => other.on === on).length === 1;
        const begun = [...project.costs, ...project.hours].some(({ date }) => date === on);
        const { money, minutes = 0, withheld } = effectOf(project, correction);
        // An amount without a rate is in no total, and the check refuses it.
        if (!alone || begun || withheld) continue;
        const before = addDays(on, -1);
        expect(money?.minor ?? 0).toBe(spent(project, on) - spent(project, before));
        expect(minutes).toBe(worked(project, on) - worked(project, before));
      }
    }),
  );
});
