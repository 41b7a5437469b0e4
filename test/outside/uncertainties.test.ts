import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import type { Calculation } from '../../src/calc/calculation.ts';
import { library } from '../../src/calc/library.ts';
import type { ReadyCalculation } from '../../src/calc/work-out.ts';
import { propagate } from '../../src/measure/propagate.ts';
import { spreadOf } from '../../src/measure/uncertain.ts';
import { exampleOf } from '../calc/example-of.ts';
import { ready, source, value } from '../measure/source.ts';

// The Python package uncertainties propagates to the first order by derivatives of its own (Debian: python3-uncertainties).
// A variable is a name, a value, and how much it carries of each source of standard uncertainty 1.
const SCRIPT = `
import json, sys
from uncertainties import ufloat, umath, __version__
from math import pi
asked = json.load(sys.stdin)
sources = {key: ufloat(0, 1, key) for case in asked for _, _, parts in case['variables'] for key, _ in parts}
functions = {name: getattr(umath, name) for name in 'sqrt sin cos tan asin acos atan exp log'.split()}
answers = []
for case in asked:
    names = {'pi': pi, 'g_n': 9.80665, 'abs': abs, **functions}
    for name, at, parts in case['variables']:
        names[name] = at + sum(u*sources[key] for key, u in parts) if parts else at
    y = eval(case['formula'].replace('^', '**'), {'__builtins__': {}}, names)
    of = getattr(y, 'derivatives', {})
    parts = [[key, of.get(sources[key], 0)] for key in sources if sources[key] in of]
    answers.append({'value': getattr(y, 'n', y), 'u': getattr(y, 's', 0), 'parts': parts})
json.dump(answers, sys.stdout)
`;

interface Asked {
  readonly formula: string;
  readonly variables: readonly (readonly [
    name: string,
    value: number,
    parts: readonly (readonly [source: string, u: number])[],
  ])[];
}

interface Answer {
  readonly value: number;
  readonly u: number;
  /** How much of each source the result carries, with its sign. */
  readonly parts: readonly (readonly [source: string, u: number])[];
}

function ask(cases: readonly Asked[]): Answer[] {
  const { status, stdout, stderr } = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(cases),
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Answer[];
}

const present = spawnSync('/usr/bin/python3', ['-c', 'import uncertainties']).status === 0;
const ABSENT = 'there is no Python package uncertainties here (Debian: python3-uncertainties)';

/** A calculation at its worked example, every input with a source of 1 % of it and all with one shared source of 0.1 %. */
function atExample(calculation: Calculation): { made: ReadyCalculation; values: number[] } {
  const [example] = calculation.examples;
  if (example === undefined) throw new Error(`${calculation.name} has no example`);
  const { ready: made, values } = exampleOf(calculation, example);
  return { made, values };
}

const sourcesAt = (name: string, at: number) =>
  [
    [name, 0.01 * (Math.abs(at) || 1)],
    ['shared', 0.001 * (at || 1)],
  ] as const;

const smooth = [...library.values()].filter(
  (calculation) => !/\b(min|max)\(/.test(atExample(calculation).made.text),
);

function compare(found: ReturnType<typeof propagate>, theirs: Answer | undefined): void {
  const within = 1e-9;
  expect(theirs).toBeDefined();
  const { value: y, u, parts } = theirs as Answer;
  expect(Math.abs(found.value - y)).toBeLessThanOrEqual(within * Math.abs(y));
  expect(Math.abs((spreadOf(found.components).u ?? 0) - u)).toBeLessThanOrEqual(within * u);
  const carried = new Map(found.components.map(({ key, u: part }) => [key, part]));
  for (const [key, part] of parts)
    expect(Math.abs((carried.get(key) ?? 0) - part), key).toBeLessThanOrEqual(within * u);
}

describe('Python’s uncertainties', () => {
  test('propagates every smooth calculation of the library at its worked example to the same', ({
    skip,
  }) => {
    skip(!present, ABSENT);
    expect(smooth.length).toBeGreaterThan(50);
    const cases = smooth.map(atExample).map(({ made, values }) => ({
      formula: made.text,
      variables: made.names.map((name, index) => {
        const at = values[index] as number;
        return [name, at, sourcesAt(name, at)] as const;
      }),
    }));
    const answers = ask(cases);
    for (const [index, calculation] of smooth.entries()) {
      const { made, values } = atExample(calculation);
      const inputs = values.map((at, place) =>
        value(at, ...sourcesAt(made.names[place] as string, at).map(([key, u]) => source(key, u))),
      );
      compare(propagate(made, inputs), answers[index]);
    }
  });

  test('would catch a source that is lost, or taken for two', ({ skip }) => {
    skip(!present, ABSENT);
    const variables = ['a', 'b'].map((name) => [name, 2, sourcesAt(name, 2)] as const);
    const [theirs] = ask([{ formula: 'a*b', variables }]);
    const product = (...sharedKeys: readonly string[]) =>
      propagate(
        ready('a*b', ['a', 'b']),
        sharedKeys.map((key, index) =>
          value(2, source(index === 0 ? 'a' : 'b', 0.02), source(key, 0.002)),
        ),
      );
    expect(() => compare(product('shared', 'shared'), theirs)).not.toThrow();
    expect(() => compare(product('shared', 'other'), theirs)).toThrow();
  });

  test('keeps the correlation of JCGM 100:2008 H.2 as we do', ({ skip }) => {
    skip(!present, ABSENT);
    const sets = {
      V: [5.007, 4.994, 5.005, 4.99, 4.999],
      I: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
      phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
    };
    const variables = Object.entries(sets).map(([name, values]) => {
      const centre = values.reduce((sum, x) => sum + x, 0) / 5;
      return [name, centre, values.map((x, k) => [`set ${k}`, (x - centre) / Math.sqrt(20)])];
    }) as unknown as Asked['variables'];
    const inputs = variables.map(([, at, parts]) =>
      value(at, ...parts.map(([key, u]) => source(key, u))),
    );
    for (const formula of ['V/I*cos(phi)', 'V/I*sin(phi)', 'V/I + 0*phi'])
      compare(
        propagate(ready(formula, ['V', 'I', 'phi']), inputs),
        ask([{ formula, variables }])[0],
      );
  });
});
