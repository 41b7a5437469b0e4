import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { checkContent } from '../check/check.ts';
import { addRows } from '../import/add-rows.ts';
import { importedBefore } from '../import/before.ts';
import { charsetRefusal, type Encoding } from '../import/charset.ts';
import { checkRows } from '../import/check-rows.ts';
import { findMapping } from '../import/find-mapping.ts';
import { finishWriting } from '../import/finish-writing.ts';
import { guessMapping } from '../import/guess-mapping.ts';
import { lineOutcomes } from '../import/line-outcomes.ts';
import { countOutcomes, type Outcome } from '../import/outcome.ts';
import { refusedTable, writeRefused } from '../import/refused-file.ts';
import { readTable, type Table } from '../import/table.ts';
import { describeCounts, describeOutcomes } from '../import/table-text.ts';
import type { ImportMapping } from '../model/kinds.ts';
import { type ReadContent, type ReadProject, readContent } from '../read/content.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { type ImportArguments, readImportArguments } from './import-arguments.ts';
import { countProblems, describeProblems, plural } from './print-problems.ts';

/** Shows what a file of another program would add to the ledger, and adds it when asked to. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readImportArguments(args);
  if ('say' in wanted) return say(wanted.say, wanted.status);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  const bytes = await readFile(wanted.file).catch((error: NodeJS.ErrnoException) => error);
  if (bytes instanceof Error) return say(`${wanted.file} can't be read: ${bytes.message}`, 2);

  if (wanted.write) {
    const busy = await finishWriting(contentDir);
    if (busy) return say(busy, 1);
  }
  const content = await readContent(contentDir);
  const found = findMapping(content, wanted);
  if ('wrong' in found) return say(found.wrong, 2);
  const { project, mapping } = found;
  const broken = content.problems.filter(({ file }) => file === `${project.id}/imports.yaml`);
  const unfit = checkContent(content, new Date()).filter(
    ({ file, level }) => file === `${project.id}/imports.yaml` && level === 'error',
  );
  if (broken.length + unfit.length > 0) {
    console.error(describeProblems(unfit.length > 0 ? unfit : broken, contentDir));
    return say('Nothing was imported.', 1);
  }
  if (mapping === undefined) return noMapping(bytes, wanted, project);

  const refusal = charsetRefusal(bytes, mapping.encoding as Encoding, wanted.file);
  if (refusal) return say(refusal, 1);
  const table = readTable(bytes, mapping);
  if ('missing' in table) return say(`${wanted.file}: ${table.missing}`, 1);
  return importTable({ bytes, table, mapping, wanted, content, project });
}

interface Job {
  readonly bytes: Uint8Array;
  readonly table: Table;
  readonly mapping: ImportMapping;
  readonly wanted: ImportArguments;
  readonly content: ReadContent;
  readonly project: ReadProject;
}

async function importTable(job: Job): Promise<number> {
  const { bytes, table, mapping, wanted, content, project } = job;
  const now = new Date();
  const before = await importedBefore(contentDir, project);
  const read = lineOutcomes(table.data, mapping, before);
  const outcomes = checkRows(read, content, project, now);
  const counts = countOutcomes(outcomes, table.data.length);
  console.log(describeOutcomes(outcomes, process.stdout.columns ?? 160));
  console.log(`\n${describeCounts(counts, wanted.write ? 'added' : 'to add')}`);
  console.log(
    `(besides the header, ${plural(table.above.length, 'line')} above it and ${plural(table.blank, 'blank line')} below)`,
  );
  const refused = outcomes.filter((outcome) => outcome.is === 'refused');
  if (!wanted.write) {
    if (counts.added > 0) console.log('Nothing is written yet: add --write.');
    return refused.length > 0 ? 1 : 0;
  }

  const status = counts.added > 0 ? await write(outcomes, before.imported, job, now) : 0;
  if (status !== 0) return status;
  if (refused.length === 0) return 0;
  const bom = bytes[0] === 0xef;
  const kept = refusedTable(table, refused, mapping.encoding as Encoding, bom);
  console.log(`Refused lines are in ${await writeRefused(wanted.file, kept)}.`);
  return 1;
}

async function write(
  outcomes: readonly Outcome[],
  imported: Awaited<ReturnType<typeof importedBefore>>['imported'],
  { project, wanted }: Job,
  now: Date,
): Promise<number> {
  const added = outcomes.filter((outcome) => outcome.is === 'added');
  const by = `import of ${basename(wanted.file)}`;
  const options = { contentDir, project: project.id, imported, now, by };
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

function noMapping(bytes: Uint8Array, { file }: ImportArguments, project: ReadProject): number {
  const isUtf8 = charsetRefusal(bytes, 'utf-8', file) === undefined;
  const encoding = isUtf8 ? 'utf-8' : 'windows-1252';
  const unreadable = charsetRefusal(bytes, encoding, file);
  if (unreadable) return say(unreadable, 1);
  const id = basename(file)
    .toLowerCase()
    .replace(/\.[^.]*$|\d+/g, '')
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
  const phase = project.lists.phases[0]?.value.id ?? 'phase';
  console.error(
    `No mapping of ${project.id} reads ${basename(file)}. A guess, to look over and put into ${project.id}/imports.yaml:\n`,
  );
  console.log(guessMapping(bytes, id || 'bank', encoding, phase, basename(file)));
  console.error(
    'Then import again; --as NAME says which mapping it is where its "files" does not.',
  );
  return 1;
}

function say(text: string, status: number): number {
  if (status === 0) console.log(text);
  else console.error(text);
  return status;
}
