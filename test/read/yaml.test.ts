import { describe, expect, it } from 'vitest';
import { readYamlList, readYamlRecord } from '../../src/read/yaml.ts';

const list = (text: string) => readYamlList(text, 'a.yaml');
const problemsIn = (text: string) =>
  list(text).problems.map(
    ({ line, column, code, message, fix }) =>
      `${line}:${column} ${code} ${message}${fix ? ` → ${fix}` : ''}`,
  );

describe('a YAML list', () => {
  it('gives every scalar as the text it was written with', () => {
    const { records } = list(`- amount: 12.50
  hours: 2:30
  year: 0012
  yes: true
  hex: 0x1F
  quoted: "640 kg"
  single: 'it''s'
  day: 2025-03-08
  exp: 1e3
`);
    expect(records.map(({ value }) => value)).toEqual([
      {
        amount: '12.50',
        hours: '2:30',
        year: '0012',
        yes: 'true',
        hex: '0x1F',
        quoted: '640 kg',
        single: "it's",
        day: '2025-03-08',
        exp: '1e3',
      },
    ]);
  });

  it('leaves out what has no value', () => {
    const { records } = list('- id: x\n  note:\n  phase: ~\n  source: null\n');
    expect(records[0]?.value).toEqual({ id: 'x' });
  });

  it('reads lists, groups and folded texts', () => {
    const { records } = list(
      '- parts: [gib, nut]\n  steps:\n    - one\n    - two\n  note: >-\n    in two\n    lines\n  machine: {maker: W}\n',
    );
    expect(records[0]?.value).toEqual({
      parts: ['gib', 'nut'],
      steps: ['one', 'two'],
      note: 'in two lines',
      machine: { maker: 'W' },
    });
  });

  it('may be empty, or comments only', () => {
    expect(list('')).toEqual({ records: [], problems: [] });
    expect(list('# nothing yet\n')).toEqual({ records: [], problems: [] });
  });

  it('takes a key named like a part of JavaScript for a key', () => {
    const [record] = list('- __proto__: x\n  constructor: y\n').records;
    expect(Object.entries(record?.value ?? {})).toEqual([
      ['__proto__', 'x'],
      ['constructor', 'y'],
    ]);
  });
});

describe('a place in a YAML list', () => {
  const [first, second] = list(`# parts
- id: gib
  got: 2025-03-10
- id: nut
  parts: [one, "two"]
  machine:
    maker: W
`).records;
  const spot = (place?: { line: number; column: number }) => `${place?.line}:${place?.column}`;

  it('is where the value starts, its quote included', () => {
    expect(spot(first?.placeOf(['id']))).toBe('2:7');
    expect(spot(first?.placeOf(['got']))).toBe('3:8');
    expect(spot(second?.placeOf(['parts']))).toBe('5:10');
    expect(spot(second?.placeOf(['parts', 1]))).toBe('5:16');
    expect(spot(second?.placeOf(['machine', 'maker']))).toBe('7:12');
  });

  it('of a key is where the key starts', () => {
    expect(spot(first?.keyPlaceOf(['got']))).toBe('3:3');
    expect(spot(second?.keyPlaceOf(['machine', 'maker']))).toBe('7:5');
  });

  it('of something that is not there is the nearest around it', () => {
    expect(spot(first?.placeOf(['phase']))).toBe('2:3');
    expect(spot(second?.placeOf(['machine', 'model']))).toBe('7:5');
    expect(spot(second?.placeOf(['people', 3, 'id']))).toBe('4:3');
  });
});

describe('a YAML file is refused', () => {
  it('where a key stands twice, each time', () => {
    expect(problemsIn('- id: x\n  id: y\n  id: z\n')).toEqual([
      '2:3 yaml/duplicate-key broken YAML: Map keys must be unique → remove one of the two',
      '3:3 yaml/duplicate-key broken YAML: Map keys must be unique → remove one of the two',
    ]);
  });

  it('where a key is no word', () => {
    expect(problemsIn('- ? [a, b]\n  : 1\n- *x : 1\n')).toEqual([
      '1:5 yaml/key a list, a group or an alias stands where a name is wanted → write name: value',
      '3:3 yaml/key a list, a group or an alias stands where a name is wanted → write name: value',
    ]);
    expect(problemsIn('- 1: a\n  "1": b\n')).toHaveLength(1);
  });

  it('of many keys in the time their number takes', () => {
    const keys = Array.from({ length: 40_000 }, (_, index) => `  k${index}: 1\n`).join('');
    const started = performance.now();
    expect(problemsIn(`-\n${keys}`)).toEqual([]);
    expect(performance.now() - started).toBeLessThan(15_000);
  });

  it('where one value stands for another', () => {
    expect(problemsIn('- &gib\n  id: gib\n- *gib\n')).toEqual([
      '3:3 yaml/alias the alias "*gib" is not read here → write the value out',
    ]);
  });

  it('where aliases would grow to a billion', () => {
    const rows = 'bcdefgh'
      .split('')
      .map((name, i) => `- &${name} [${`*${'abcdefgh'[i]},`.repeat(10)}]`);
    expect(list(['- &a [x]', ...rows].join('\n')).problems[0]?.code).toMatch(/^yaml\//);
  });

  it('where it is indented with tabs', () => {
    const [problem] = problemsIn('- id: x\n\tname: y\n');
    expect(problem).toMatch(/^2:2 yaml\/broken .* → indent with spaces$/);
    expect(problemsIn('- id: x\n\tname: y\n')).toHaveLength(1);
  });

  it('where a second document starts', () => {
    expect(problemsIn('- id: x\n---\n- id: y\n')).toEqual([
      '2:1 yaml/broken broken YAML: a second document starts here → remove the line "---"',
    ]);
  });

  it('where a text with a colon has no quotes', () => {
    expect(problemsIn('- id: x\n  note: Torque: 45\n')).toEqual([
      '2:9 yaml/broken broken YAML: Nested mappings are not allowed in compact mappings → put quotes around a text that contains ": "',
    ]);
  });

  it('where a text starts with a sign that YAML keeps for itself', () => {
    expect(problemsIn('- note: @home\n')[0]).toMatch(/^1:9 .* → put quotes around a text/);
    expect(problemsIn('- note: !x y\n')[0]).toMatch(/^1:9 .* → put quotes around a text/);
  });

  it('where it is nested deeper than any record', () => {
    expect(list(`- ${'['.repeat(10_000)}`).problems).not.toEqual([]);
    expect(list(`- ${'['.repeat(40)}${']'.repeat(40)}`).problems[0]?.code).toBe('yaml/too-deep');
  });

  it('where it is no list', () => {
    expect(problemsIn('\nid: x\n')).toEqual([
      '2:1 yaml/not-a-list the file is not a list of records → start each record with "- id: …"',
    ]);
  });
});

describe('front matter', () => {
  it('counts its lines from the top of the file', () => {
    const { records } = readYamlRecord('title: T\ndate: d', 'e.mdx', { lines: 1 });
    expect(records[0]?.placeOf(['date'])).toEqual({ file: 'e.mdx', line: 3, column: 7 });

    const { problems } = readYamlRecord('title: T\ntitle: U', 'e.mdx', { lines: 1 });
    expect(problems[0]).toMatchObject({ line: 3, column: 1 });
  });
});
