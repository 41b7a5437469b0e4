import { expect, test } from 'vitest';
import { problemAt } from '../../src/read/problem.ts';

test('what a file says can’t command the terminal it is printed on', () => {
  const said = problemAt(
    { file: 'a.csv', line: 1, column: 1 },
    'x/y',
    'unknown "\u001b[2J\u009b\u202eevil\u200b"',
    'write\n\t"\u0007"',
  );
  expect(said.message).toBe('unknown "\\u001b[2J\\u009b\\u202eevil\\u200b"');
  expect(said.fix).toBe('write\n\t"\\u0007"');
});
