import { basename } from 'node:path';
import { addRows } from '../import/add-rows.ts';
import type { Before } from '../import/line-outcomes.ts';
import { countOutcomes, type Outcome } from '../import/outcome.ts';
import { writeRefused } from '../import/refused-file.ts';
import { describeCounts, describeOutcomes } from '../import/table-text.ts';
import type { ReadProject } from '../read/content.ts';
import { contentDir } from '../site/folders.ts';
import type { ImportArguments } from './import-arguments.ts';
import { countProblems, describeProblems, plural } from './print-problems.ts';
import { say } from './say.ts';

type Refused = Extract<Outcome, { is: 'refused' }>;

/** What became of a file's lines, and what else is to be said and kept of it. */
export interface Job {
  readonly outcomes: readonly Outcome[];
  /** How many lines there were, counted where they were read. */
  readonly read: number;
  /** What stands in the file and is no line of its own. */
  readonly besides: string;
  readonly refusedFile: (refused: readonly Refused[]) => Uint8Array;
  readonly ending: 'csv' | 'ics';
  readonly wanted: ImportArguments;
  readonly project: ReadProject;
  readonly before: Before;
  readonly now: Date;
}

/** Prints what becomes of each line, and the sum that must come out; writes rows and refused lines when asked to. */
export async function importOutcomes(job: Job): Promise<number> {
  const { outcomes, wanted } = job;
  const counts = countOutcomes(outcomes, job.read);
  console.log(describeOutcomes(outcomes, process.stdout.columns ?? 160));
  console.log(`\n${describeCounts(counts, wanted.write ? 'added' : 'to add')}`);
  console.log(`(besides ${job.besides})`);
  const refused = outcomes.filter((outcome) => outcome.is === 'refused');
  if (!wanted.write) {
    if (counts.added > 0) console.log('Nothing is written yet: add --write.');
    return refused.length > 0 ? 1 : 0;
  }

  const status = counts.added > 0 ? await write(job) : 0;
  if (status !== 0) return status;
  if (refused.length === 0) return 0;
  const path = await writeRefused(wanted.file, job.refusedFile(refused), job.ending);
  console.log(`Refused ${job.ending === 'ics' ? 'events' : 'lines'} are in ${path}.`);
  return 1;
}

async function write({ outcomes, before, project, wanted, now }: Job): Promise<number> {
  const added = outcomes.filter((outcome) => outcome.is === 'added');
  const by = `import of ${basename(wanted.file)}`;
  const options = { contentDir, project: project.id, imported: before.imported, now, by };
  const result = await addRows(added, options);
  if ('problems' in result) {
    console.error(describeProblems(result.problems, contentDir));
    return say(`${countProblems(result.problems)}. Nothing was imported.`, 1);
  }
  const files = [...new Set(result.written.map(({ file }) => file))].map((file) => {
    const ids = result.written.filter((row) => row.file === file).map(({ id }) => id);
    return `${file}: ${ids.join(' ')}`;
  });
  console.log(`Wrote ${plural(added.length, 'row')}.\n${files.join('\n')}`);
  return 0;
}
