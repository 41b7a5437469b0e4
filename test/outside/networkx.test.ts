import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { criticalPaths } from '../../src/plan/critical-path.ts';
import { type Activity, solveNetwork } from '../../src/plan/network.ts';
import { networks } from '../plan/random-networks.ts';
import { activity, solved } from '../plan/solved.ts';

// NetworkX (Debian: python3-networkx) knows graphs, not schedules. A longest path is a shortest one with all lengths negative,
// by Bellman and Ford: from S for what is earliest, against the arrows from E for what is latest.
const SCRIPT = `
import json, sys
import networkx as nx
def solve(activities):
    G = nx.DiGraph()
    time = {a['id']: a['duration'] for a in activities}
    def join(a, b, length):
        if not G.has_edge(a, b) or G[a][b]['weight'] > -length: G.add_edge(a, b, weight=-length)
    for a in activities:
        join('S', a['id'], max([0] + [w['until'] for w in a['waits']]))
        join(a['id'], 'E', a['duration'])
        for link in a['after']: join(link['id'], a['id'], time[link['id']] + link['lag'])
    if not nx.is_directed_acyclic_graph(G):
        return {'loop': sorted({n for ring in nx.simple_cycles(G) for n in ring})}
    early = nx.single_source_bellman_ford_path_length(G, 'S')
    late = nx.single_source_bellman_ford_path_length(G.reverse(), 'E')
    finish = -early['E']
    rows = {i: [-early[i], finish + late[i]] for i in time}
    tight = [(a, b) for a, b, d in G.edges(data=True) if abs(-early[a] - d['weight'] + early[b]) < 1e-9 and a != 'S']
    H = nx.DiGraph(tight); H.add_node('E')
    ahead = [n for n in nx.ancestors(H, 'E') if H.in_degree(n) == 0]
    paths = [p[:-1] for n in ahead for p in nx.all_simple_paths(H, n, 'E')]
    return {'finish': finish, 'rows': rows, 'paths': sorted(paths)}
json.dump([solve(one) for one in json.load(sys.stdin)], sys.stdout)
`;

interface Answer {
  readonly loop?: readonly string[];
  readonly finish: number;
  /** Early and late start. */
  readonly rows: Readonly<Record<string, readonly [number, number]>>;
  readonly paths: readonly (readonly string[])[];
}

function ask(cases: readonly (readonly Activity[])[]): Answer[] {
  const input = cases.map((some) => some.map((one) => ({ waits: [], ...one })));
  const { status, stdout, stderr } = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(input),
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Answer[];
}

const present = spawnSync('/usr/bin/python3', ['-c', 'import networkx']).status === 0;
const ABSENT = 'there is no Python package networkx here (Debian: python3-networkx)';
const MOST_PATHS = 1000;

function compare(activities: readonly Activity[], theirs: Answer | undefined): void {
  const network = solved(activities);
  expect(network.finish).toBe(theirs?.finish);
  const rows = network.rows.map((row) => [row.id, [row.earlyStart, row.lateStart]] as const);
  expect(Object.fromEntries(rows)).toEqual(theirs?.rows);
  const paths = criticalPaths(activities, network, MOST_PATHS).map(({ ids }) => ids);
  expect(new Set(paths.map(String))).toEqual(new Set(theirs?.paths.map(String)));
}

describe('networkx', () => {
  const samples = fc.sample(networks, { numRuns: 300, seed: 5 });

  test('finds the same times and critical paths on random networks', ({ skip }) => {
    skip(!present, ABSENT);
    const answers = ask(samples);
    expect(answers.some(({ paths }) => paths.length > 1)).toBe(true);
    for (const [index, activities] of samples.entries()) compare(activities, answers[index]);
  });

  test('would catch a lag that is lost', ({ skip }) => {
    skip(!present, ABSENT);
    const [theirs] = ask([[activity('a', 3), activity('b', 2, ['a', 4])]]);
    expect(() => compare([activity('a', 3), activity('b', 2, ['a', 4])], theirs)).not.toThrow();
    expect(() => compare([activity('a', 3), activity('b', 2, 'a')], theirs)).toThrow();
  });

  test('finds a ring where we do, through the same activities', ({ skip }) => {
    skip(!present, ABSENT);
    const rings = samples.flatMap((activities) => {
      const [first, last] = [activities[0], activities.at(-1)];
      if (first === undefined || last === undefined) return [];
      const closed = { ...first, after: [...first.after, { id: last.id, lag: 0 }] };
      return [[closed, ...activities.slice(1)]];
    });
    const answers = ask(rings);
    const kinds = new Set<string>();
    for (const [index, activities] of rings.entries()) {
      const network = solveNetwork(activities);
      kinds.add(network.kind);
      const loop = answers[index]?.loop;
      expect(network.kind === 'loop').toBe(loop !== undefined);
      if (network.kind === 'loop') expect(loop).toEqual(expect.arrayContaining([...network.ids]));
    }
    expect(kinds.size).toBe(2);
  });
});
