import { describe, expect, test } from 'vitest';
import { criticalPaths } from '../../src/plan/critical-path.ts';
import { solveNetwork } from '../../src/plan/network.ts';
import { activity, rowsOf, solved } from './solved.ts';

describe('a network', () => {
  test('starts a follower after the lag, or before the finish when they overlap', () => {
    const rows = rowsOf([
      activity('weld', 5),
      activity('prime', 2, ['weld', 3]),
      activity('wire', 4, ['weld', -2]),
    ]);
    expect(rows.get('prime')).toMatchObject({ earlyStart: 8, earlyFinish: 10, totalFloat: 0 });
    expect(rows.get('wire')).toMatchObject({ earlyStart: 3, earlyFinish: 7, totalFloat: 3 });
  });

  test('never starts before its own start, however long the overlap', () => {
    expect(rowsOf([activity('a', 1), activity('b', 9, ['a', -5])]).get('b')?.earlyStart).toBe(0);
  });

  test('tells what holds each start back', () => {
    const wait = { id: 'bearings', until: 12 };
    const rows = rowsOf([
      activity('strip', 3),
      { ...activity('spindle', 2, 'strip'), waits: [wait, { id: 'weather', until: 1 }] },
      activity('run', 1, 'strip', 'spindle'),
    ]);
    expect(rows.get('strip')?.driver).toEqual({ by: 'start' });
    expect(rows.get('spindle')?.driver).toEqual({ by: 'wait', id: 'bearings' });
    expect(rows.get('run')?.driver).toEqual({ by: 'activity', id: 'spindle' });
    expect(rows.get('strip')).toMatchObject({ totalFloat: 9, freeFloat: 9, critical: false });
  });

  test('names the wait that a critical path begins with', () => {
    const activities = [
      activity('strip', 3),
      { ...activity('spindle', 2, 'strip'), waits: [{ id: 'bearings', until: 12 }] },
    ];
    expect(criticalPaths(activities, solved(activities))).toEqual([
      { ids: ['spindle'], wait: 'bearings' },
    ]);
  });

  test('lists no more critical paths than are asked for, though there are thousands', () => {
    const layers = Array.from({ length: 12 }, (_, layer) =>
      ['x', 'y', 'z'].map((name) =>
        activity(
          `${name}${layer}`,
          1,
          ...(layer > 0 ? ['x', 'y', 'z'].map((before) => `${before}${layer - 1}`) : []),
        ),
      ),
    ).flat();
    expect(criticalPaths(layers, solved(layers), 4)).toHaveLength(4);
  });

  test('is the ring when activities wait for each other, without what only hangs on it', () => {
    const ring = [
      activity('before', 1),
      activity('a', 1, 'before', 'c'),
      activity('b', 1, 'a'),
      activity('c', 1, 'b'),
      activity('after', 1, 'c'),
    ];
    const network = solveNetwork(ring);
    expect(network.kind).toBe('loop');
    expect('ids' in network && [...network.ids].sort()).toEqual(['a', 'b', 'c']);
    expect(solveNetwork([activity('self', 1, 'self')])).toEqual({ kind: 'loop', ids: ['self'] });
  });

  test('passes over a link to nothing', () => {
    expect(rowsOf([activity('a', 2, 'gone')]).get('a')?.earlyFinish).toBe(2);
  });

  test('with nothing in it is finished at its start', () => {
    expect(solved([])).toEqual({ kind: 'network', rows: [], finish: 0 });
  });

  test('has no float of a rounded sum', () => {
    const rows = rowsOf([activity('a', 0.1), activity('b', 0.2, 'a'), activity('c', 0.3)]);
    expect(rows.get('c')).toMatchObject({ totalFloat: 0, critical: true });
  });
});
