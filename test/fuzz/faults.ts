import { mendContent } from '../../src/mend/mend-content.ts';
import type { Problem } from '../../src/read/problem.ts';
import { decodeTyped } from '../../src/read/text.ts';
import { NOON } from '../check/content-folder.ts';
import { Draw } from './draw.ts';
import { everyKind, PHOTO } from './every-kind.ts';
import { mutate, mutateBytes } from './mutate.ts';
import {
  bytesOf,
  downloadsOf,
  type FileBytes,
  isSound,
  openWith,
  soundBytes,
  workOut,
} from './open-mutated.ts';

/** What is changed: in one file or two, by one mutation or several after each other. */
export interface Case {
  readonly files: readonly number[];
  readonly changes: readonly (readonly number[])[];
  readonly bytes: readonly number[];
}

const names = Object.keys(everyKind);
const others = Object.values(everyKind);

/** The files of a case, changed. */
export function filesOf({ files, changes, bytes }: Case): FileBytes {
  return new Map(
    files.map((number) => {
      const file = names[number % names.length] as string;
      const text = changes.reduce(
        (before, numbers) => mutate(before, new Draw(numbers), { file, others }).slice(0, 200_000),
        everyKind[file] as string,
      );
      return [file, mutateBytes(bytesOf(text), new Draw(bytes))] as const;
    }),
  );
}

/** Longer than any file of this size may take, on a machine that does much else. */
const MOST_MS = 8_000;

/** What is wrong with how a case was answered: nothing, when all its mistakes were said where they are. */
export async function faultsOf(folder: string, tried: Case): Promise<string[]> {
  const changed = filesOf(tried);
  const started = performance.now();
  try {
    const opened = await openWith(folder, changed);
    const faults = opened.problems.flatMap((problem) => faultsOfProblem(problem, changed));
    for (const project of opened.projects) workOut(project);
    if (isSound(opened)) {
      if (opened.projects.length !== 1) faults.push('no problem and no project');
      downloadsOf(opened);
    }
    // It opens the content several times more; one in four is enough.
    if ((tried.bytes[0] ?? 0) % 4 === 0 && opened.problems.some(({ mend }) => mend))
      faults.push(...(await faultsOfMend(folder, changed)));
    const took = performance.now() - started;
    if (took > MOST_MS) faults.push(`took ${Math.round(took)} ms`);
    return faults;
  } catch (error) {
    return [`thrown: ${(error as Error).stack?.split('\n').slice(0, 4).join(' | ')}`];
  }
}

const UNSHOWABLE = /(?![\t\n])\p{Cc}/u;
const OURS = /\[object|undefined|\bNaN\b/;

function faultsOfProblem(problem: Problem, changed: FileBytes): string[] {
  const { file, line, column, code, message, fix = '' } = problem;
  const place = `${code} at ${file}:${line}:${column}`;
  const bytes = changed.get(file) ?? soundBytes.get(file);
  if (bytes === undefined) return file === PHOTO ? [] : [`${place}: there is no such file`];
  const text = decodeTyped(bytes, file);
  const lines = (typeof text === 'string' ? text : new TextDecoder().decode(bytes)).split('\n');
  const width = lines[line - 1]?.length ?? -1;
  return [
    ...(column < 1 || column > width + 1 ? [`${place}: outside of the file`] : []),
    ...(message === '' || UNSHOWABLE.test(message + fix) || OURS.test(message.replace(/".*"/gs, ''))
      ? [`${place}: says ${JSON.stringify(message + fix)}`]
      : []),
  ];
}

/** A mend changes no more than it says, and what it leaves has nothing more to mend. */
async function faultsOfMend(folder: string, changed: FileBytes): Promise<string[]> {
  const typed = new Map([...soundBytes, ...changed]);
  const { files, mended } = await mendContent(folder, NOON, typed);
  const after = new Map([
    ...changed,
    ...[...files].map(([file, { after }]) => [file, after] as const),
  ]);
  const again = await mendContent(folder, NOON, new Map([...typed, ...after]));
  if (again.mended.length > 0 && mended.length > 0) return ['mending twice mends more'];
  const errors = async (bytes: FileBytes) =>
    (await openWith(folder, bytes)).problems.filter(({ level }) => level === 'error').length;
  if (mended.length > 0 && (await errors(after)) > (await errors(changed)) + 20)
    return ['mending makes new errors'];
  return [];
}
