import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { filesOf } from '../site/pages.ts';

/** Rooms in which an expression meets what somebody wrote. */
const ROOMS =
  /^(book|check|formula|import|ledger|mark|measure|mend|model|money|parts|photo|plan|publish|read|time|trust|units|write)\//;

/** Every regular expression that stands in a file. */
function expressionsIn(file: string): { at: string; expression: RegExp }[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(join('src', file), 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: { at: string; expression: RegExp }[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) {
      const [, body = '', flags = ''] = /^\/(.*)\/(\w*)$/s.exec(node.text) ?? [];
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      found.push({ at: `${file}:${line + 1} ${node.text}`, expression: new RegExp(body, flags) });
    }
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

/** Long runs of one sign or a few, with a start that fits and an end at which what began well fails. */
const STARTS = ['', 'a', '1', '"', '<', '- ', 'https://', '/*', '2025-', '1.', 'a;'];
const RUNS =
  ' |\t|\n|a|1|-|.|"|\'|,|;|/|*|<|(|\\|a-|a |1 |1,|/*|*/|""|é|\r\n|\n |=|[|{|\u0001'.split('|');
const ENDS = ['', '!', '\u0001x', '\n!'];

/** Milliseconds that an expression takes over a text that is made longer by a run. */
function timeOf(
  expression: RegExp,
  [start, run, end]: readonly [string, string, string],
  length: number,
): number {
  const text = start + run.repeat(length / run.length) + end;
  expression.lastIndex = 0;
  const started = process.cpuUsage();
  expression.test(text);
  return process.cpuUsage(started).user / 1_000;
}

/** A text over which an expression takes the square of its length, or more. */
function trapOf(expression: RegExp): string | undefined {
  for (const start of STARTS)
    for (const run of RUNS)
      for (const end of ENDS) {
        const made = [start, run, end] as const;
        // A tenth of a millisecond is much for an expression that looks at each of 1,500 signs once; the longer text tells.
        if (timeOf(expression, made, 1_500) < 0.2) continue;
        if (timeOf(expression, made, 20_000) > 40 && timeOf(expression, made, 20_000) > 40)
          return JSON.stringify(made);
      }
  return undefined;
}

test('no expression takes the square of a text’s length', { timeout: 300_000 }, () => {
  const all = filesOf('src')
    .filter((file) => file.endsWith('.ts') && ROOMS.test(file))
    .flatMap(expressionsIn);
  expect(all.length).toBeGreaterThan(200);
  const traps = all.flatMap(({ at, expression }) => {
    const trap = trapOf(expression);
    return trap === undefined ? [] : [`${at} is slow on ${trap}`];
  });
  expect(traps).toEqual([]);
});

test.each([/\d+$/, /^(.*?)\s*x$/, /^\d*\.?\d+$/])('the trap in %s is noticed', (expression) => {
  expect(trapOf(expression)).toBeDefined();
});
