import fc from 'fast-check';
import { expect, test } from 'vitest';
import { criticalPaths } from '../../src/plan/critical-path.ts';
import { networks } from '../plan/random-networks.ts';
import { rowsOf, solved } from '../plan/solved.ts';

const place = fc.nat({ max: 100 });

test('nothing is early after it is late, and a free float is part of the total one', () => {
  fc.assert(
    fc.property(networks, (activities) => {
      for (const row of solved(activities).rows) {
        expect(row.earlyStart).toBeLessThanOrEqual(row.lateStart);
        expect(row.earlyFinish - row.earlyStart).toBe(row.duration);
        expect(row.lateFinish - row.lateStart).toBe(row.duration);
        expect(row.freeFloat).toBeGreaterThanOrEqual(0);
        expect(row.freeFloat).toBeLessThanOrEqual(row.totalFloat);
      }
    }),
  );
});

test('a critical path has no float anywhere, and its lengths, lags and first wait add up to the finish', () => {
  fc.assert(
    fc.property(networks, (activities) => {
      const network = solved(activities);
      const rows = new Map(network.rows.map((row) => [row.id, row]));
      const byId = new Map(activities.map((one) => [one.id, one]));
      const paths = criticalPaths(activities, network);
      expect(paths.length).toBeGreaterThan(0);
      for (const { ids, wait } of paths) {
        const first = byId.get(ids[0] ?? '');
        let time = first?.waits?.find(({ id }) => id === wait)?.until ?? 0;
        for (const [index, id] of ids.entries()) {
          const link = byId.get(id)?.after.find((one) => one.id === ids[index - 1]);
          time += (link?.lag ?? 0) + (byId.get(id)?.duration ?? 0);
          expect(rows.get(id)?.critical).toBe(true);
        }
        expect(time).toBe(network.finish);
      }
    }),
  );
});

test('what drives a start is the predecessor, the wait or the start it begins at', () => {
  fc.assert(
    fc.property(networks, (activities) => {
      const rows = rowsOf(activities);
      for (const { id, after, waits = [] } of activities) {
        const row = rows.get(id);
        const driver = row?.driver ?? { by: 'start' };
        const at = {
          start: () => 0,
          activity: (name: string) =>
            (rows.get(name)?.earlyFinish ?? 0) + (after.find((link) => link.id === name)?.lag ?? 0),
          wait: (name: string) => waits.find((wait) => wait.id === name)?.until,
        }[driver.by];
        expect(at('id' in driver ? driver.id : '')).toBe(row?.earlyStart);
      }
    }),
  );
});

test('a predecessor more never brings the finish forward, and one wait fewer never puts it off', () => {
  fc.assert(
    fc.property(networks, place, place, (activities, one, other) => {
      const { rows, finish } = solved(activities);
      const [first, second] = [one % rows.length, other % rows.length].sort((a, b) => a - b);
      const from = rows[first ?? 0]?.id ?? '';
      const to = rows[second ?? 0]?.id ?? '';
      const more = activities.map((item) =>
        item.id === to && from !== to
          ? { ...item, after: [...item.after, { id: from, lag: 0 }] }
          : item,
      );
      expect(solved(more).finish).toBeGreaterThanOrEqual(finish);
      const fewer = activities.map((item) => (item.id === to ? { ...item, waits: [] } : item));
      expect(solved(fewer).finish).toBeLessThanOrEqual(finish);
    }),
  );
});

test('the order in which activities are written changes no time', () => {
  fc.assert(
    fc.property(networks, (activities) => {
      const times = (some: typeof activities) =>
        new Map([...rowsOf(some)].map(([id, { driver: _, ...row }]) => [id, row]));
      expect(times(activities.toReversed())).toEqual(times(activities));
    }),
  );
});
