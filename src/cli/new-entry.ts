import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { openBook } from '../book/open.ts';
import { rowLine } from '../book/row-line.ts';
import { untoldIn } from '../book/untold.ts';
import { todayOf } from '../check/check.ts';
import { entrySchema } from '../model/entry.ts';
import { type ReadContent, type ReadProject, readContent } from '../read/content.ts';
import { suggest } from '../read/nearest.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { addDays, type Day, latestDay, parseDay } from '../time/day.ts';
import { alone } from '../write/alone.ts';
import { entrySkeleton } from '../write/entry-skeleton.ts';
import { wordsOf } from '../write/next-id.ts';
import { writeNew } from '../write/place-file.ts';
import { projectFor } from './add.ts';
import { isInteractive } from './ask-fields.ts';
import { askTexts } from './ask-texts.ts';
import { plural } from './print-problems.ts';
import { wrongUse } from './wrong-use.ts';

/** Makes a draft of an entry that says what happened since the last one. */
export async function newEntry(
  args: readonly string[],
  wrongUse: (text: string) => number,
): Promise<number> {
  const wanted = readArguments(args);
  if (typeof wanted === 'string') return wrongUse(wanted);
  const noDir = contentDirProblem();
  if (noDir) return refuse(noDir, 2);
  const content = await readContent(contentDir);
  const { words, options } = wanted;
  const [first, second] = words;
  const isProject = second !== undefined || content.projects.some(({ id }) => id === first);
  const project = await projectFor(content, isProject ? first : undefined);
  if (typeof project === 'string') return refuse(project, 2);

  const title = (isProject ? second : first) ?? (await askTitle());
  if (title === undefined) return refuse('Missing: a title, like "Cab off".');
  const today = todayOf(project, new Date());
  const date = options.date === undefined ? today : parseDay(options.date);
  const phase = options.phase ?? phaseOf(project, date ?? today);
  const wrong =
    wrongTitle(title) ?? wrongDate(options.date, date, today) ?? wrongPhase(project, phase);
  if (wrong || date === undefined || phase === undefined) return refuse(wrong ?? '');
  return writeEntry(content, project, { title, date, phase });
}

interface Head {
  readonly title: string;
  readonly date: Day;
  readonly phase: string;
}

async function writeEntry(
  content: ReadContent,
  project: ReadProject,
  { title, date, phase }: Head,
): Promise<number> {
  const last = latestDay(
    project.entries.map(({ value }) => value.date).filter((day) => day <= date),
  );
  // The day of the last entry itself may have gone on after it was written.
  const untold = untoldIn(project, { after: last && addDays(last, -1), until: date });
  const book = (await openBook(contentDir, { now: new Date() })).project(project.id);
  const language = project.info?.value.language ?? content.site?.value.language ?? 'en';
  const rows = untold.rows.map(({ id, kind, day }) => ({
    id,
    day,
    line: (book && rowLine(book, id, language)) ?? kind,
  }));
  const text = entrySkeleton({ title, date, phase, rows, photos: untold.photos });

  const file = join(contentDir, project.id, 'entries', `${date}-${wordsOf(title)}.mdx`);
  const done = await alone(contentDir, 'a new entry', () => writeNew(file, text));
  if (done === false) return refuse(`There is ${file} already.`);
  if (done !== true) return refuse(done.busy);
  console.log(`Wrote ${file}
It lists ${plural(rows.length, 'row')} and ${plural(untold.photos.length, 'photo')} that no entry tells yet.
Open it in your editor. npm run dev shows it; it stays out of the site while it says "draft: true".`);
  return 0;
}

/** The phase of the newest rows up to a day; before there are any, the first that is not finished. */
function phaseOf({ lists }: ReadProject, date: Day): string | undefined {
  const dated = [...lists.hours, ...lists.costs].filter(({ value }) => value.date <= date);
  const newest = dated
    .filter(({ value }) => value.phase !== undefined)
    .reduce<(typeof dated)[number] | undefined>(
      (best, row) => (best === undefined || row.value.date >= best.value.date ? row : best),
      undefined,
    );
  const open = lists.phases.find(({ value }) => value.finished === undefined) ?? lists.phases[0];
  return newest?.value.phase ?? open?.value.id;
}

function readArguments(args: readonly string[]) {
  try {
    const options = { date: { type: 'string' }, phase: { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    if (positionals.length > 2) return 'Put the title in quotes.';
    return { words: positionals, options: values };
  } catch (error) {
    return wrongUse(error);
  }
}

async function askTitle(): Promise<string | undefined> {
  if (!isInteractive()) return undefined;
  const asked = await askTexts([{ name: 'title', ask: 'Title', wrong: wrongTitle }]);
  return asked?.title;
}

function wrongTitle(title: string): string | undefined {
  const issue = entrySchema.shape.title.safeParse(title).error?.issues[0];
  if (issue) return `The title ${issue.message}.`;
  return wordsOf(title) === ''
    ? 'The title needs a letter or a digit of the Latin alphabet.'
    : undefined;
}

function wrongDate(typed: string | undefined, date: Day | undefined, today: Day) {
  if (date === undefined) return `"${typed}" is no day. Write year-month-day, like ${today}.`;
  return date > today ? `${date} is in the future (today is ${today}).` : undefined;
}

function wrongPhase({ id, lists }: ReadProject, phase: string | undefined): string | undefined {
  const known = lists.phases.map(({ value }) => value.id);
  if (phase === undefined) return `${id} has no phase yet: write one into ${id}/phases.yaml.`;
  if (known.includes(phase)) return undefined;
  return `There is no phase "${phase}". ${suggest(phase, known) ?? `Phases: ${known.join(', ')}`}`;
}

function refuse(why: string, status = 1): number {
  console.error(`${why}\nNothing was written.`);
  return status;
}
