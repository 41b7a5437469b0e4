import { createPublicKey, type KeyObject, randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { checkContent, todayOf } from '../check/check.ts';
import { SECRET_LOST } from '../check/marks.ts';
import { addMark, originOf } from '../mark/add-mark.ts';
import { marksOf } from '../mark/ledger-marks.ts';
import { writeMark } from '../mark/write-mark.ts';
import { type ReadContent, type ReadProject, readContent } from '../read/content.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { type Day, showDay } from '../time/day.ts';
import { toBase64 } from '../trust/hash.ts';
import { printKey } from '../trust/note-key.ts';
import { alone } from '../write/alone.ts';
import { PLACEHOLDER } from '../write/blank-project.ts';
import { type MarkArguments, readMarkArguments } from './mark-arguments.ts';
import { isKeyOf, makeKey, readKey } from './mark-key.ts';
import { noProject } from './no-project.ts';
import { countProblems, describeProblems, plural } from './print-problems.ts';
import { say } from './say.ts';

/** Checks, then marks the rows that have no mark yet. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readMarkArguments(args);
  if ('say' in wanted) return say(wanted.say, wanted.status);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (wanted.newKey !== undefined) return run(wanted);
  const done = await alone(contentDir, 'mark', () => run(wanted));
  return typeof done === 'number' ? done : say(`${done.busy}\nNothing was marked.`, 1);
}

async function run(wanted: MarkArguments): Promise<number> {
  const content = await readContent(contentDir);
  const unknown = unknownProject(content, wanted.projects);
  if (unknown) return say(unknown, 2);
  if (wanted.newKey !== undefined) return newKey(content, wanted, wanted.newKey);

  const problems = checkContent(content, new Date()).filter(
    ({ code }) => !(wanted.newSecret && code === SECRET_LOST),
  );
  const errors = problems.filter(({ level }) => level === 'error');
  if (errors.length > 0) {
    console.log(describeProblems(errors, contentDir));
    return say(`${countProblems(errors)}. Nothing was marked.`, 1);
  }
  const key = wanted.key === undefined ? undefined : await readKey(wanted.key);
  if (key && 'refused' in key) return say(key.refused, 1);
  return markAll(content, wanted, key?.privateKey);
}

/** All projects or none: what is refused for one is found out before anything is written. */
async function markAll(
  content: ReadContent,
  wanted: MarkArguments,
  privateKey: KeyObject | undefined,
): Promise<number> {
  const chosen = projectsOf(content, wanted);
  const jobs = chosen.map((project) => jobOf(content, project, { ...wanted, privateKey }));
  const refused = jobs.flatMap((job) => ('refused' in job ? [job.refused] : []));
  if (refused.length > 0) return say(refused.join('\n'), 1);

  let written = 0;
  for (const job of jobs) {
    if ('refused' in job) continue;
    if (job.added === undefined) {
      console.log(`${job.project.id}: no row that is not marked already.`);
      continue;
    }
    await writeMark(join(contentDir, job.project.id), job.added);
    console.log(report(job.project, job.added));
    written++;
  }
  if (written > 0)
    console.log(
      '\nCommit marks.txt and marked-rows.jsonl with the rows, keep a copy of marks-secret.txt that nobody else can read, and publish: npm run build',
    );
  return 0;
}

const SECRET_AWAY =
  'marks-secret.txt, from which its earlier marks were made, is not here. Copy it from where they were made; if it is lost, "npm run mark -- --new-secret" makes one for the rows to come.';

const NO_ADDRESS = `a mark carries the address of the site for good, and site.yaml still has ${PLACEHOLDER}. Write the address that the site will have, then mark.`;

interface JobOptions {
  readonly date: Day | undefined;
  readonly newSecret: boolean;
  readonly privateKey: KeyObject | undefined;
}

function jobOf(content: ReadContent, project: ReadProject, options: JobOptions) {
  const marks = marksOf(project);
  const today = todayOf(project, new Date());
  const day = options.date ?? today;
  const refuse = (why: string) => ({ refused: `${project.id}: ${why}` });
  if ('problems' in marks) return refuse('its marks are broken');
  if (day > today) return refuse(`${day} is in the future (today is ${today}).`);
  const last = marks.marks.at(-1);
  if (last && day < last.date) return refuse(`${day} is before the mark of ${last.date}.`);

  if (last && project.marks.secret === undefined && !options.newSecret) return refuse(SECRET_AWAY);
  if (last === undefined && content.site?.value.address === PLACEHOLDER) return refuse(NO_ADDRESS);

  const origin = last?.origin ?? originOf(content.site?.value.address ?? '', project.id);
  const { privateKey, newSecret } = options;
  const line = project.info?.value.markKey;
  if (privateKey && !isKeyOf(line, origin, createPublicKey(privateKey))) {
    const own = printKey({ name: origin, publicKey: createPublicKey(privateKey) });
    return refuse(
      line === undefined
        ? `project.yaml names no key yet. Add this line: markKey: ${own}`
        : 'the key is not the one that markKey in project.yaml names.',
    );
  }
  return {
    project,
    added: addMark(project, marks, { origin, day, privateKey, randomBytes, newSecret }),
  };
}

function report(project: ReadProject, added: NonNullable<ReturnType<typeof addMark>>): string {
  const { mark, rows, grown } = added;
  if (mark === undefined)
    return `${project.id}: a new secret for the rows to come; there is no row that is not marked already.`;
  const again = grown > 0 ? `, ${grown} of them again, since they have grown` : '';
  const unsigned = project.info?.value.markKey !== undefined && mark.signatures.length === 0;
  return [
    `${project.id}: marked ${plural(rows, 'row')}${again}, as of ${showDay(mark.date, 'en-GB')}.`,
    `  size ${mark.size}`,
    `  root ${toBase64(mark.root)}`,
    `  ${unsigned ? 'not signed, though project.yaml names a key: sign with --key' : signedText(mark.signatures.length)}`,
  ].join('\n');
}

function signedText(count: number): string {
  return count > 0 ? 'signed' : 'not signed';
}

async function newKey(content: ReadContent, wanted: MarkArguments, path: string): Promise<number> {
  const wrong = await makeKey(path);
  if (wrong) return say(wrong, 1);
  const key = await readKey(path);
  if ('refused' in key) return say(key.refused, 1);
  const publicKey = createPublicKey(key.privateKey);
  console.log(
    `Wrote ${path}. Keep it, and keep a copy; whoever has it can sign as you.\nAdd to project.yaml:`,
  );
  for (const project of projectsOf(content, wanted)) {
    const marks = marksOf(project);
    const first = 'problems' in marks ? undefined : marks.marks[0]?.origin;
    const name =
      first ?? originOf(content.site?.value.address ?? 'https://site.invalid/', project.id);
    console.log(`\n# ${project.id}\nmarkKey: ${printKey({ name, publicKey })}`);
  }
  return 0;
}

function projectsOf({ projects }: ReadContent, { projects: ids }: MarkArguments): ReadProject[] {
  return projects.filter(({ id }) => ids.length === 0 || ids.includes(id));
}

function unknownProject({ projects }: ReadContent, ids: readonly string[]): string | undefined {
  const known = projects.map(({ id }) => id);
  const wrong = ids.find((id) => !known.includes(id));
  if (wrong === undefined) return undefined;
  return noProject(wrong, known);
}
