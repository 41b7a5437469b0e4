import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { coverageTable } from './coverage-table.ts';
import { EQUIVALENT } from './equivalent.ts';
import { judges, MUTATED, mutatedFiles } from './mutated-folder.ts';
import { readReport, together } from './mutation-report.ts';
import { judgedAgain, passed } from './slow-judges.ts';

test('coverage is told by folder: what tests came by of all there is, not a mean of shares', () => {
  const file = (lines: number, covered: number, branches: number, taken: number) => ({
    lines: { total: lines, covered },
    branches: { total: branches, covered: taken },
  });
  const table = coverageTable(
    new Map([
      ['/home/src/money/tax.ts', file(90, 90, 10, 5)],
      ['/home/src/money/round.ts', file(10, 0, 0, 0)],
      ['/home/src/cli/deep/say.ts', file(0, 0, 0, 0)],
      ['/home/src/content.config.ts', file(4, 1, 2, 1)],
    ]),
  );
  expect(table.map((line) => line.split(/ {2,}/))).toEqual([
    ['folder', 'files', 'lines', 'branches'],
    ['cli', '1', '–', '–'],
    ['money', '2', '90.0 %', '50.0 %'],
    ['src', '1', '25.0 %', '50.0 %'],
    ['all', '4', '87.5 %', '50.0 %'],
  ]);
});

test('a mutation report counts what was noticed, and names what was not, with its place', () => {
  const at = (line: number, column: number, to: number, status: string, replacement: string) => ({
    status,
    replacement,
    location: { start: { line, column }, end: { line, column: to } },
  });
  const report = readReport('money', {
    files: {
      'src/money/tax.ts': {
        source: 'const a = 1;\nreturn a < b;\n',
        mutants: [
          at(2, 8, 13, 'Survived', 'a <= b'),
          at(2, 8, 13, 'Killed', 'true'),
          at(2, 8, 13, 'Timeout', 'false'),
          at(1, 1, 13, 'Ignored', ''),
          at(1, 1, 13, 'CompileError', ''),
          at(1, 11, 12, 'NoCoverage', '2'),
        ],
      },
    },
  });
  expect(report).toEqual({
    folder: 'money',
    planted: 4,
    noticed: 2,
    percent: 50,
    equivalent: 0,
    survivors: [
      'src/money/tax.ts:2:8 a < b → a <= b',
      'src/money/tax.ts:1:11 1 → 2 (no test comes here)',
    ],
  });
});

test('what nobody noticed is asked of the slow tests by its place, and has their judgement', () => {
  const at = (status: string, replacement: string, line = 2) => ({
    status,
    replacement,
    location: { start: { line, column: 8 }, end: { line, column: 13 } },
  });
  const source = 'const a = 1;\nreturn a < b;\nreturn c < d;\n';
  const report = (...mutants: ReturnType<typeof at>[]) => ({
    files: { 'src/money/tax.ts': { source, mutants } },
  });
  const quick = report(
    at('Survived', 'a <= b'),
    at('Survived', 'a > b'),
    at('Killed', 'true'),
    at('NoCoverage', 'c <= d', 3),
  );
  expect(passed('money', quick)).toEqual(['tax.ts:2:7-2:12', 'tax.ts:3:7-3:12']);
  const slow = report(at('Killed', 'a <= b'), at('Survived', 'a > b'), at('Survived', 'true'));
  expect(judgedAgain(quick, slow)).toEqual(
    report(
      at('Killed', 'a <= b'),
      at('Survived', 'a > b'),
      at('Killed', 'true'),
      at('NoCoverage', 'c <= d', 3),
    ),
  );
});

test('mistakes are planted in each file of a folder by itself, and not where none can be switched on', () => {
  expect(mutatedFiles('money')).toContain('allocate.ts');
  const trust = mutatedFiles('trust');
  expect(trust).toContain('verify/verify-browser.js');
  expect(trust.filter((file) => file.endsWith('marks-page.js'))).toEqual([]);
  const run = (file: string) => ({ files: { [file]: { source: '', mutants: [] } } });
  expect(Object.keys(together([run('a'), { files: {} }, run('b')]).files)).toEqual(['a', 'b']);
});

test('the slow tests of a folder are judges by themselves', () => {
  const slow = judges('measure', true);
  expect(slow).toContain('test/laws/draw-errors.test.ts');
  expect(judges('measure').filter((file) => slow.includes(file))).toEqual([]);
});

test('changes that are no mistakes are counted apart, and each of the list is still a piece of its file', () => {
  const [first] = EQUIVALENT;
  if (first === undefined) throw new Error('the list is empty');
  const { file, was, instead } = first;
  const mutant = {
    status: 'Survived',
    replacement: instead,
    location: { start: { line: 1, column: 3 }, end: { line: 1, column: was.length + 3 } },
  };
  const files = { [file]: { source: `  ${was};`, mutants: [mutant] } };
  expect(readReport('money', { files })).toMatchObject({ equivalent: 1, survivors: [] });
  const gone = EQUIVALENT.filter(({ file: name, was: piece, beside }) => {
    const lines = readFileSync(name, 'utf8').split('\n');
    return !lines.some((line) => line.includes(piece) && line.includes(beside));
  });
  expect(gone).toEqual([]);
});

test.each(MUTATED)('%s has judges, its own tests among them', (folder) => {
  const found = judges(folder);
  expect(found.filter((file) => file.startsWith(`test/${folder}/`)).length).toBeGreaterThan(1);
  expect(found.some((file) => file.startsWith('test/outside/'))).toBe(true);
});
