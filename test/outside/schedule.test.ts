import { describe, expect, test } from 'vitest';
import { criticalPaths } from '../../src/plan/critical-path.ts';
import type { Activity } from '../../src/plan/network.ts';
import {
  estimate,
  estimatePath,
  probabilityBy,
  type ThreePoint,
} from '../../src/plan/three-point.ts';
import { activity, rowsOf, solved } from '../plan/solved.ts';

type Arc = readonly [
  from: number,
  to: number,
  time: number,
  ...times: readonly [es: number, ef: number, ls: number, lf: number, slack: number],
];

/** Activities on arrows, `1–2` from node 1 to node 2: each follows all that end where it begins. */
const onNodes = (arcs: readonly Arc[]): Activity[] =>
  arcs.map(([from, to, time]) =>
    activity(
      `${from}–${to}`,
      time,
      ...arcs.filter((arc) => arc[1] === from).map((arc) => `${arc[0]}–${arc[1]}`),
    ),
  );

// B. W. Taylor, Introduction to Management Science, chapter 8, solutions 5 and 6: node, node, time, ES, EF, LS, LF, slack.
const taylor5: readonly Arc[] = [
  [1, 2, 7, 0, 7, 2, 9, 2],
  [1, 3, 10, 0, 10, 0, 10, 0],
  [2, 4, 6, 7, 13, 9, 15, 2],
  [3, 4, 5, 10, 15, 10, 15, 0],
  [3, 5, 4, 10, 14, 14, 18, 4],
  [4, 5, 3, 15, 18, 15, 18, 0],
  [5, 6, 2, 18, 20, 18, 20, 0],
];
const taylor6: readonly Arc[] = [
  [1, 2, 8, 0, 8, 1, 9, 1],
  [1, 3, 10, 0, 10, 0, 10, 0],
  [1, 4, 9, 0, 9, 6, 15, 6],
  [2, 5, 6, 8, 14, 9, 15, 1],
  [2, 6, 4, 8, 12, 16, 20, 8],
  [3, 5, 5, 10, 15, 10, 15, 0],
  [4, 5, 0, 9, 9, 15, 15, 6],
  [4, 7, 7, 9, 16, 20, 27, 11],
  [5, 7, 12, 15, 27, 15, 27, 0],
  [5, 8, 15, 15, 30, 16, 31, 1],
  [6, 9, 18, 12, 30, 20, 38, 8],
  [7, 8, 4, 27, 31, 27, 31, 0],
  [8, 9, 7, 31, 38, 31, 38, 0],
];

describe('Taylor’s networks have the published times and slacks', () => {
  test.each([
    { name: '20 weeks', arcs: taylor5, finish: 20, path: '1–3 3–4 4–5 5–6' },
    { name: '38 weeks, with a dummy', arcs: taylor6, finish: 38, path: '1–3 3–5 5–7 7–8 8–9' },
  ])('$name', ({ arcs, finish, path }) => {
    const network = solved(onNodes(arcs));
    const rows = new Map(network.rows.map((row) => [row.id, row]));
    const found = arcs.map(([from, to, time]) => {
      const row = rows.get(`${from}–${to}`);
      return [
        ...[from, to, time, row?.earlyStart, row?.earlyFinish],
        ...[row?.lateStart, row?.lateFinish, row?.totalFloat],
      ];
    });
    expect(found).toEqual(arcs);
    expect(network.finish).toBe(finish);
    expect(criticalPaths(onNodes(arcs), network)).toEqual([
      { ids: path.split(' '), wait: undefined },
    ]);
  });
});

// Hillier & Lieberman, Introduction to Operations Research, Reliable Construction: most durations as published, links and the
// three estimates from memory. Id, duration, least, likely, most, predecessors.
const reliable = [
  ['A', 2, 1, 2, 3, ''],
  ['B', 4, 2, 3.5, 8, 'A'],
  ['C', 10, 6, 9, 18, 'B'],
  ['D', 6, 4, 5.5, 10, 'C'],
  ['E', 4, 1, 4.5, 5, 'C'],
  ['F', 5, 4, 4, 10, 'E'],
  ['G', 7, 5, 6.5, 11, 'D'],
  ['H', 9, 5, 8, 17, 'E G'],
  ['I', 7, 3, 7.5, 9, 'C'],
  ['J', 8, 3, 9, 9, 'F I'],
  ['K', 4, 4, 4, 4, 'J'],
  ['L', 5, 1, 5.5, 7, 'J'],
  ['M', 2, 1, 2, 3, 'H'],
  ['N', 6, 5, 5.5, 9, 'K L'],
] as const;

describe('Reliable Construction', () => {
  const activities = reliable.map(([id, duration, , , , after]) =>
    activity(id, duration, ...after.split(' ')),
  );
  const pointsOf = (ids: readonly string[]): ThreePoint[] =>
    reliable
      .filter(([id]) => ids.includes(id))
      .map(([, , least, likely, most]) => ({ least, likely, most }));

  test('takes 44 weeks along A B C E F J L N, with the slacks beside it', () => {
    const network = solved(activities);
    expect(network.finish).toBe(44);
    expect(criticalPaths(activities, network).map(({ ids }) => ids.join(''))).toEqual(['ABCEFJLN']);
    const slacks = [...rowsOf(activities).values()].filter(({ totalFloat }) => totalFloat !== 0);
    expect(Object.fromEntries(slacks.map(({ id, totalFloat }) => [id, totalFloat]))).toEqual({
      ...{ D: 4, G: 4, H: 4, I: 2, K: 1, M: 4 },
    });
  });

  test('is done in 47 weeks with probability Φ(1), from three estimates', () => {
    for (const [id, duration] of reliable)
      expect(estimate(pointsOf([id])[0] as ThreePoint).mean, id).toBeCloseTo(duration, 12);
    const path = estimatePath(pointsOf('ABCEFJLN'.split('')));
    expect(path.mean).toBeCloseTo(44, 12);
    expect(path.variance).toBeCloseTo(9, 12);
    expect(probabilityBy(47, path)).toBeCloseTo(0.8413447461, 10);
  });
});

// Taylor’s PERT example: least, likely, most; published mean and P(x ≤ 28) = 0.9633 from a table at z = 1.79.
test('Taylor’s PERT example has the published means, variances and probability', () => {
  const points = [
    [5, 8, 17, 9, 4],
    [7, 10, 13, 10, 1],
    [3, 5, 7, 5, 4 / 9],
    [1, 3, 5, 3, 4 / 9],
    [4, 6, 8, 6, 4 / 9],
    [3, 3, 3, 3, 0],
    [3, 4, 5, 4, 1 / 9],
  ] as const;
  const estimates = points.map(([least, likely, most]) => ({ least, likely, most }));
  for (const [index, [, , , mean, variance]] of points.entries()) {
    const found = estimate(estimates[index] as ThreePoint);
    expect(found.mean).toBeCloseTo(mean, 12);
    expect(found.variance).toBeCloseTo(variance, 12);
  }
  const path = estimatePath([0, 2, 4, 6].map((index) => estimates[index] as ThreePoint));
  expect(path.mean).toBeCloseTo(24, 12);
  expect(path.variance).toBeCloseTo(5, 12);
  expect(probabilityBy(28, path)).toBeCloseTo(0.9631808649, 10);
  expect(Math.abs(probabilityBy(28, path) - 0.9633)).toBeLessThan(0.0005);
});
