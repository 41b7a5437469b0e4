import { expect, test } from 'vitest';
import { readCsv } from '../../src/read/csv.ts';
import { readMdx } from '../../src/read/mdx.ts';
import { readYamlRecord } from '../../src/read/yaml.ts';

/** What is said to type instead, of a file that can't be read. */
const fixesOf = (problems: readonly { readonly fix?: string | undefined }[]) =>
  problems.map(({ fix }) => fix);

test.for([
  ['name: A\ncurrency EUR\ntimeZone: x\n', 'write currency: EUR'],
  ['machine: [\nname: y\n', 'close what is opened with [ or {'],
  ["name: 'it's'\n", 'put quotes around the whole text, or write name: value on a line of its own'],
] as const)('of YAML %j it says: %s', ([text, fix]) => {
  expect(fixesOf(readYamlRecord(text, 'project.yaml').problems)).toEqual([fix]);
});

test.for([
  ['<Spec of=bore />', 'write of="bore"'],
  ['a <!-- note --> b', 'write {/* … */} around a note that readers do not see'],
  ['Only <5 mm', 'write &lt; for a "less than" in text, and close every <Name … />'],
] as const)('of an entry with %j it says: %s', ([text, fix]) => {
  expect(fixesOf(readMdx(`---\ntitle: x\n---\n\n${text}\n`, 'entry.mdx').problems)).toEqual([fix]);
});

test('of rows that have another separator than the header it says so', () => {
  const { problems } = readCsv('id;date;hours\nh-1,2025-03-01,2:30\n', 'hours.csv');
  expect(fixesOf(problems)).toEqual([
    'the cells are separated by "," here and by another sign in the header: use one of them',
  ]);
});
