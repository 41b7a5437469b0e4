import { expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { usualFields } from '../../src/write/last-time.ts';
import { type Changes, inContentFolder } from '../check/content-folder.ts';

const costs = (...rows: readonly string[]) => ({
  'bench/ledger/costs.csv': ['id,date,amount,category,phase,what,supplier', ...rows, ''].join('\n'),
});

const usualIn = (changes: Changes) =>
  inContentFolder(changes, async (folder) => {
    const project = (await readContent(folder)).projects.find(({ id }) => id === 'bench');
    return project && usualFields(project, 'costs');
  });

it('asks for what most rows have, and for the phase of the first row', async () => {
  const files = { 'bench/project.yaml': 'name: Bench\n' };
  expect(await usualIn({ ...files, ...costs() })).toEqual(['phase']);
  const row = 'c-001,2025-05-02,4.00,tool,,File,Brix';
  expect(await usualIn({ ...files, ...costs(row) })).toEqual(['supplier']);
});
