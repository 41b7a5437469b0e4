import { readFile, stat } from 'node:fs/promises';
import { checkContent } from '../check/check.ts';
import { importedBefore } from '../import/before.ts';
import { isCalendar, readCalendar } from '../import/calendar.ts';
import { calendarRefusal } from '../import/calendar-lines.ts';
import { charsetRefusal, type Encoding } from '../import/charset.ts';
import { checkRows } from '../import/check-rows.ts';
import { eventOutcomes } from '../import/event-outcomes.ts';
import { findMapping } from '../import/find-mapping.ts';
import { type Before, lineOutcomes } from '../import/line-outcomes.ts';
import { refusedCalendar } from '../import/refused-events.ts';
import { refusedTable } from '../import/refused-file.ts';
import { readTable } from '../import/table.ts';
import type { ImportMapping } from '../model/kinds.ts';
import { type ReadProject, readContent } from '../read/content.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { alone } from '../write/alone.ts';
import { type ImportArguments, readImportArguments } from './import-arguments.ts';
import { printGuess } from './import-guess.ts';
import { importOutcomes, type Job } from './import-outcomes.ts';
import { importPhotos } from './import-photos.ts';
import { describeProblems, plural } from './print-problems.ts';
import { say } from './say.ts';
import { tellFailure } from './tell-failure.ts';

/** Shows what a file of another program would add to the ledger, and adds it when asked to. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readImportArguments(args);
  if ('say' in wanted) return say(wanted.say, wanted.status);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (!wanted.write) return run(wanted);
  const done = await alone(contentDir, 'import', () => run(wanted));
  return typeof done === 'number' ? done : say(`${done.busy}\nNothing was imported.`, 1);
}

async function run(wanted: ImportArguments): Promise<number> {
  const isFolder = (await stat(wanted.file).catch(() => undefined))?.isDirectory();
  if (isFolder) return importPhotos(wanted);
  const bytes = await readFile(wanted.file).catch((error: NodeJS.ErrnoException) => error);
  if (bytes instanceof Error)
    return say(tellFailure(bytes) ?? `${wanted.file} can't be read: ${bytes.message}`, 2);

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
  if (mapping === undefined) return printGuess(bytes, wanted.file, project);

  const refusal = isCalendar(bytes)
    ? calendarRefusal(bytes, wanted.file)
    : charsetRefusal(bytes, mapping.encoding as Encoding, wanted.file);
  if (refusal) return say(refusal, 1);
  const before = await importedBefore(contentDir, project, wanted);
  const read = isCalendar(bytes)
    ? readEvents(bytes, mapping, project, before)
    : readLines(bytes, mapping, before);
  if ('wrong' in read) return say(`${wanted.file}: ${read.wrong}`, 1);
  const now = new Date();
  const outcomes = checkRows(read.outcomes, content, project, now);
  return importOutcomes({ ...read, outcomes, wanted, project, before, now });
}

type ReadFile =
  | Pick<Job, 'outcomes' | 'read' | 'besides' | 'refusedFile' | 'ending'>
  | { readonly wrong: string };

function readLines(bytes: Uint8Array, mapping: ImportMapping, before: Before): ReadFile {
  const table = readTable(bytes, mapping);
  if ('missing' in table) return { wrong: table.missing };
  const { above, blank, data } = table;
  const bom = bytes[0] === 0xef;
  return {
    outcomes: lineOutcomes(data, mapping, before),
    read: data.length,
    besides: `the header, ${plural(above.length, 'line')} above it and ${plural(blank, 'blank line')} below`,
    refusedFile: (refused) => refusedTable(table, refused, mapping.encoding as Encoding, bom),
    ending: 'csv',
  };
}

function readEvents(
  bytes: Uint8Array,
  mapping: ImportMapping,
  project: ReadProject,
  before: Before,
): ReadFile {
  if (mapping.kind !== 'hours')
    return { wrong: `a calendar holds hours, and mapping "${mapping.id}" makes ${mapping.kind}` };
  const calendar = readCalendar(bytes);
  if ('wrong' in calendar) return calendar;
  const { components, zones } = calendar;
  return {
    outcomes: eventOutcomes(calendar, mapping, project.info?.value.timeZone ?? 'UTC', before),
    read: components.length,
    besides: plural(zones.length, 'description of a time zone', 'descriptions of time zones'),
    refusedFile: (refused) => refusedCalendar(calendar, refused),
    ending: 'ics',
  };
}
