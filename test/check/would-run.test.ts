import { expect, test } from 'vitest';
import { wouldRun } from '../../src/check/would-run.ts';

const said = (text: string) => wouldRun(text, 'a.mdx').map(({ code }) => code);

test.for([
  ['{process.exit()}', 'mdx/expression'],
  ['a {1 + 1} b', 'mdx/expression'],
  ["import fs from 'node:fs'", 'mdx/import'],
  ['export const a = 1', 'mdx/import'],
  ['<Spec of={process.exit()} />', 'component/prop-value'],
  ['<Spec {...process.env} />', 'component/prop-value'],
  ['<p title={process.exit()}>x</p>', 'component/prop-value'],
  ['<p onclick="alert(1)">x</p>', 'component/html-attribute'],
  ['<script>alert(1)</script>', 'component/html'],
  ['[x](javascript:alert(1))', 'link/address'],
] as const)('%s would run', ([text, code]) => {
  expect(said(text)).toContain(code);
});

test('plain text, components of ours and links of ours run nothing', () => {
  const text =
    '**Text**, <Spec of="a" />, [b](part:b), [c](https://c.example/), \\{ and {/* a note */}';
  expect(said(text)).toEqual([]);
});
