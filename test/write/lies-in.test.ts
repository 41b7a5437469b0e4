import { join } from 'node:path';
import { expect, test } from 'vitest';
import { liesIn } from '../../src/write/lies-in.ts';

test.for([
  ['shed', 'shed', true],
  ['shed', 'shed/keys/mark.pem', true],
  ['shed', 'shed/..keys', true],
  ['shed', 'shed-two', false],
  ['shed', '.', false],
] as const)('liesIn("%s", "%s") is %s', ([folder, path, expected]) => {
  expect(liesIn(join('/home', folder), join('/home', path))).toBe(expected);
});
