import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addedSince } from '../../src/book/added.ts';
import type { View } from '../../src/book/types.ts';
import type { Day } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { told } from '../words/told.ts';
import { writtenDay, writtenRows } from './written-rows.ts';

type Lists = Readonly<Record<string, readonly Written[]>>;

const stepNames = ['wanted', 'ordered', 'got', 'fitted', 'sold'];

/** The lists as they were written at the end of a day: nothing that happened later is in them. */
function writtenUpTo(lists: Lists, last: Day): Lists {
  const happened = (row: Written) => row.date === undefined || String(row.date) <= last;
  return Object.fromEntries(
    Object.entries(lists).map(([kind, rows]) => [
      kind,
      kind === 'parts' ? rows.flatMap((part) => partUpTo(part, last)) : rows.filter(happened),
    ]),
  );
}

function partUpTo(part: Written, last: Day): Written[] {
  const kept = Object.entries(part).filter(
    ([field, value]) => !stepNames.includes(field) || String(value) <= last,
  );
  const had = stepNames.some((step) => part[step] !== undefined);
  const has = kept.some(([field]) => stepNames.includes(field));
  return had && !has ? [] : [Object.fromEntries(kept)];
}

/** All that a view says. A part is its state on the day: its record also has the steps that came later. */
function figuresOf({ project: _, spec: __, parts, partsByState, partsBySource, ...rest }: View) {
  const plain = (some: View['parts']) =>
    some.map(({ part, ...state }) => ({ ...state, id: part.id }));
  const grouped = (groups: ReadonlyMap<string, View['parts']>) =>
    [...groups].map(([key, some]) => [key, plain(some)]);
  return {
    ...rest,
    parts: plain(parts),
    partsByState: grouped(partsByState),
    partsBySource: grouped(partsBySource),
  };
}

const entries = fc.array(writtenDay, { maxLength: 4 }).map((days) =>
  days.map((date, index): Written => {
    return { title: `Entry ${index}`, date, phase: 'strip', summary: 'Something was done.' };
  }),
);

test('what happens later never changes what was so on a day', () => {
  fc.assert(
    fc.property(writtenRows, writtenDay, writtenDay, (lists, one, other) => {
      const [day, last] = [one, other].sort() as [Day, Day];
      const then = projectOf({ lists: writtenUpTo(lists, last) });
      const later = projectOf({ lists });
      expect(told(figuresOf(later.asOf(day)))).toEqual(told(figuresOf(then.asOf(day))));
    }),
  );
});

test('what happens later never changes what an entry added', () => {
  fc.assert(
    fc.property(writtenRows, entries, writtenDay, (lists, written, last) => {
      const early = written.filter(({ date }) => String(date) <= last);
      const then = projectOf({ lists: writtenUpTo(lists, last), entries: early });
      const later = projectOf({ lists, entries: written });
      for (const entry of then.entries) {
        const same = later.entries[entry.number - 1];
        expect(same?.title).toBe(entry.title);
        expect(told(same && addedSince(later.asOf(same.date), same, wordsOf('en')))).toEqual(
          told(addedSince(then.asOf(entry.date), entry, wordsOf('en'))),
        );
      }
    }),
  );
});

test('what entries added is, all together, the total on the day of the last', () => {
  fc.assert(
    fc.property(writtenRows, entries, (lists, written) => {
      const project = projectOf({ lists, entries: written });
      const tallies = project.entries.map((entry) =>
        addedSince(project.asOf(entry.date), entry, wordsOf('en')),
      );
      const day = project.entries.at(-1)?.date;
      fc.pre(day !== undefined);
      const view = project.asOf(day);
      const sum = (sizes: readonly number[]) => sizes.reduce((all, size) => all + size, 0);

      expect(sum(tallies.map(({ hours }) => hours.value))).toBe(view.hoursByPhase.total.value);
      expect(sum(tallies.map(({ costs }) => costs.value.minor))).toBe(
        view.costsByCategory.total.value.minor,
      );
      expect(sum(tallies.map(({ fitted }) => fitted.value))).toBe(tallies.at(-1)?.allFitted.value);
    }),
  );
});
