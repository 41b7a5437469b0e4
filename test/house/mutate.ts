// `npm run mutate [folder]`: plants one small mistake after another and looks whether a test notices. Prints a score for each folder.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { MUTATED } from './mutated-folder.ts';
import { type Report, readReport } from './mutation-report.ts';

/** Per cent of the planted mistakes that must be noticed. */
const TARGET = 85;

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(MUTATED as readonly string[]).includes(name));
if (unknown.length > 0) {
  console.error(`There is no "${unknown[0]}" to mutate. Folders: ${MUTATED.join(', ')}.`);
  process.exit(2);
}
setPriority(15);
const reports = (asked.length > 0 ? asked : MUTATED).map(mutate);
for (const { survivors } of reports) for (const survivor of survivors) console.log(survivor);
for (const { folder, noticed, planted, percent, equivalent } of reports)
  console.log(
    `${folder}: ${noticed} of ${planted} planted mistakes noticed, ${percent.toFixed(1)} %; ${equivalent} of the others are none`,
  );
process.exitCode = reports.every(({ percent }) => percent >= TARGET) ? 0 : 1;

function mutate(folder: string): Report {
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run', 'test/house/stryker.config.mjs'],
    {
      stdio: 'inherit',
      env: { ...process.env, WITNESSMARK_MUTATE: folder },
    },
  );
  if (status !== 0) throw new Error(`the mutation run of ${folder} ended with ${status}`);
  const file = `.witnessmark/mutation/${folder}/report.json`;
  return readReport(folder, JSON.parse(readFileSync(file, 'utf8')));
}
