import { expect, it } from 'vitest';
import { cssString } from '../../src/dossier/running-heads.ts';

it('a name with quotes, backslashes and line ends stays one string of CSS', () => {
  expect(cssString('The "old" press \\ one\ntwo </style>')).toBe(
    '"The \\22 old\\22  press \\5c  one\\a two \\3c /style>"',
  );
});
