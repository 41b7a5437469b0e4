// `npm run coverage [-- tests]`: runs the tests that need no built site, or some of them, and prints which share of each folder they come by.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { coverageTable, type FileCoverage } from './coverage-table.ts';

setPriority(15);
const { status } = spawnSync(
  process.execPath,
  [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--coverage',
    '--config',
    'test/house/vitest.coverage.ts',
    ...process.argv.slice(2),
  ],
  { stdio: 'inherit' },
);
const summary: Record<string, FileCoverage> = JSON.parse(
  readFileSync('.witnessmark/coverage/coverage-summary.json', 'utf8'),
);
const files = new Map(Object.entries(summary).filter(([file]) => file !== 'total'));
for (const line of coverageTable(files)) console.log(line);
process.exitCode = status ?? 1;
