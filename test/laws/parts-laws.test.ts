import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Project } from '../../src/book/types.ts';
import { chainOf } from '../../src/parts/chain.ts';
import { huntsOn } from '../../src/parts/hunt.ts';
import { originLines } from '../../src/parts/origin-lines.ts';
import { originsOn } from '../../src/parts/origins.ts';
import { whereText } from '../../src/parts/part-words.ts';
import { overdueReturns } from '../../src/parts/preparations.ts';
import { addDays, type Day, daysBetween } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { writtenDay } from './written-rows.ts';

const partIds = ['a', 'b', 'c'];
const sources = ['base', 'donor', 'new'].map((id) => ({ id, kind: id, name: id }));

const steps = fc
  .tuple(fc.array(writtenDay, { minLength: 5, maxLength: 5 }), fc.nat({ max: 31 }))
  .map(([days, chosen]) => {
    const ordered = [...days].sort();
    return Object.fromEntries(
      ['wanted', 'ordered', 'got', 'fitted', 'sold'].flatMap((name, index) =>
        chosen & (1 << index) ? [[name, ordered[index] ?? '']] : [],
      ),
    );
  });
const parts = fc.tuple(
  ...partIds.map((id) =>
    fc.tuple(steps, fc.constantFrom('base', 'donor', 'new'), fc.integer({ min: 1, max: 9 })).map(
      ([dates, source, quantity]): Written => ({
        ...{ id, name: id, system: 'body', source, quantity: String(quantity) },
        ...{ mass: `${quantity * 3} kg` },
        ...dates,
      }),
    ),
  ),
);
const searches = fc.array(
  fc.record({
    date: writtenDay,
    part: fc.constantFrom(...partIds),
    result: fc.constantFrom('none', 'listed-not-held', 'promised', 'bought'),
  }),
  { maxLength: 8 },
);
const preparations = fc.array(
  fc
    .tuple(writtenDay, fc.nat({ max: 40 }), fc.nat({ max: 40 }), fc.constantFrom(...partIds))
    .map(([date, due, away, part]) => ({
      ...{ date, parts: [part], kind: 'blasting', what: 'Blasted', out: 'true' },
      ...{ due: addDays(date, due), back: addDays(date, away) },
    })),
  { maxLength: 6 },
);
const numbered = (rows: readonly Written[], prefix: string) =>
  rows.map((row, index): Written => ({ id: `${prefix}-${index}`, ...row }));

const lists = fc.record({ parts, searches, preparations }).map((written) => ({
  sources,
  parts: written.parts,
  searches: numbered(written.searches, 's'),
  preparations: numbered(written.preparations, 'w'),
}));

/** Rows and steps that had happened by a day. */
function upTo(all: Readonly<Record<string, readonly Written[]>>, last: Day) {
  const dated = ['wanted', 'ordered', 'got', 'fitted', 'sold', 'back'];
  const cut = (row: Written) =>
    Object.fromEntries(
      Object.entries(row).filter(
        ([field, value]) => !dated.includes(field) || String(value) <= last,
      ),
    );
  const happened = (row: Written) => row.date === undefined || String(row.date) <= last;
  return Object.fromEntries(
    Object.entries(all).map(([kind, rows]) => [kind, rows.filter(happened).map(cut)]),
  );
}

/** All that the pages say of the parts on a day. */
function saidOn(project: Project, day: Day) {
  const view = project.asOf(day);
  const known = view.parts.filter(({ part }) => chainOf(view, part.id)?.steps.length);
  return {
    chains: known.map(({ part }) => {
      const chain = chainOf(view, part.id);
      return [part.id, chain?.steps, chain && whereText(chain.where, wordsOf('en'))];
    }),
    hunts: huntsOn(view).hunts.map(({ item, ...hunt }) => ({ ...hunt, id: item.part.id })),
    late: overdueReturns(view),
    pieces: originsOn(view).pieces.groups.map(({ key, figure }) => [key, figure.value]),
  };
}

test('what happens later never changes what was said of the parts on a day', () => {
  fc.assert(
    fc.property(lists, writtenDay, writtenDay, (all, one, other) => {
      const [day, last] = [one, other].sort() as [Day, Day];
      const then = projectOf({ lists: noStepless(upTo(all, last), all) });
      expect(saidOn(projectOf({ lists: all }), day)).toEqual(saidOn(then, day));
    }),
  );
});

/** A part whose steps all lie ahead was not written down yet; one that never has any was there from the start. */
function noStepless(
  then: Readonly<Record<string, readonly Written[]>>,
  all: Readonly<Record<string, readonly Written[]>>,
) {
  const count = (row: Written | undefined) => Object.keys(row ?? {}).length;
  const least = count({ id: '', name: '', system: '', source: '', quantity: '', mass: '' });
  const kept = (then.parts ?? []).filter((row, index) => {
    return count(row) > least || count(all.parts?.[index]) === least;
  });
  return { ...then, parts: kept };
}

test('the days between the steps of a part add up to the days from its first to its last', () => {
  fc.assert(
    fc.property(lists, (all) => {
      const { now } = projectOf({ lists: all });
      for (const id of partIds) {
        const chain = chainOf(now, id)?.steps ?? [];
        const [first, last] = [chain[0]?.date, chain.at(-1)?.date];
        const days = chain.reduce((sum, step) => sum + (step.days ?? 0), 0);
        expect(days).toBe(first && last ? daysBetween(first, last) : 0);
      }
    }),
  );
});

test('shares of the sources add up to the whole, and tries by result to all tries', () => {
  fc.assert(
    fc.property(lists, (all) => {
      const { now } = projectOf({ lists: all });
      const origins = originsOn(now);
      const lines = originLines(origins, wordsOf('en'));
      const total = (sizes: readonly number[]) => sizes.reduce((sum, size) => sum + size, 0);
      expect(total(lines.map(({ pieces }) => pieces?.figure.value ?? 0))).toBe(
        origins.pieces.total.value,
      );
      if (origins.pieces.total.value > 0)
        expect(total(lines.map(({ pieces }) => pieces?.share ?? 0))).toBeCloseTo(1, 12);
      for (const { results, tries } of huntsOn(now).hunts)
        expect(total([...results.values()])).toBe(tries.value);
    }),
  );
});
