// `npm run mutate [-- --slow] [folder or file …]`: plants one small mistake after another and looks whether a test notices. Prints a score for each folder.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { parseArgs } from 'node:util';
import { MUTATED, mutatedFiles } from './mutated-folder.ts';
import { type RawReport, type Report, readReport, together } from './mutation-report.ts';
import { judgedAgain, passed } from './slow-judges.ts';

/** Per cent of the planted mistakes that must be noticed. */
const TARGET = 85;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { slow: { type: 'boolean', default: false } },
});
// A folder, or a file in one: `measure`, `measure/verdict.ts`.
const asked = positionals.map((name) => name.split('/'));
const unknown = asked.find(([folder = '']) => !(MUTATED as readonly string[]).includes(folder));
if (unknown) {
  console.error(`There is no "${unknown[0]}" to mutate. Folders: ${MUTATED.join(', ')}.`);
  process.exit(2);
}
setPriority(15);
const byFolder = Map.groupBy(
  asked.length > 0 ? asked : MUTATED.map((name) => [name]),
  ([name = '']) => name,
);
const reports = [...byFolder].map(([folder, some]) =>
  mutate(
    folder,
    some.flatMap(([, ...file]) => (file.length > 0 ? [file.join('/')] : [])),
  ),
);
for (const { survivors } of reports) for (const survivor of survivors) console.log(survivor);
for (const { folder, noticed, planted, percent, equivalent } of reports)
  console.log(
    `${folder}: ${noticed} of ${planted} planted mistakes noticed, ${percent.toFixed(1)} %; ${equivalent} of the others are none`,
  );
process.exitCode = reports.every(({ percent }) => percent >= TARGET) ? 0 : 1;

/** File by file, since tests run slower the more mistakes lie ready to be switched on. */
function mutate(folder: string, files: readonly string[]): Report {
  const each = files.length > 0 ? files : mutatedFiles(folder);
  const quick = together(each.map((file) => run(folder, { WITNESSMARK_MUTATE_FILES: file })));
  const left = values.slow ? passed(folder, quick) : [];
  if (left.length === 0) return readReport(folder, quick);
  const slow = run(folder, {
    WITNESSMARK_MUTATE_FILES: left.join(','),
    WITNESSMARK_MUTATE_SLOW: 'yes',
  });
  return readReport(folder, judgedAgain(quick, slow));
}

function run(folder: string, told: Readonly<Record<string, string>>): RawReport {
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run', 'test/house/stryker.config.mjs'],
    { stdio: 'inherit', env: { ...process.env, WITNESSMARK_MUTATE: folder, ...told } },
  );
  if (status !== 0) throw new Error(`the mutation run of ${folder} ended with ${status}`);
  return JSON.parse(readFileSync(`.witnessmark/mutation/${folder}/report.json`, 'utf8'));
}
