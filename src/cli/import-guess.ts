import { basename } from 'node:path';
import { isCalendar, readCalendar } from '../import/calendar.ts';
import { calendarRefusal } from '../import/calendar-lines.ts';
import { charsetRefusal } from '../import/charset.ts';
import { guessCalendar } from '../import/guess-calendar.ts';
import { guessMapping } from '../import/guess-mapping.ts';
import type { ReadProject } from '../read/content.ts';
import { say } from './say.ts';

/** Prints a mapping for a file that none reads, as far as the file gives one away. */
export function printGuess(bytes: Uint8Array, file: string, project: ReadProject): number {
  const guess = guessFor(bytes, file, project);
  if ('wrong' in guess) return say(guess.wrong, 1);
  console.error(
    `No mapping of ${project.id} reads ${basename(file)}. A guess, to look over and put into ${project.id}/imports.yaml:\n`,
  );
  console.log(guess.mapping);
  console.error(
    'Then import again; --as NAME says which mapping it is where its "files" does not.',
  );
  return 1;
}

type Guess = { readonly mapping: string } | { readonly wrong: string };

function guessFor(bytes: Uint8Array, path: string, project: ReadProject): Guess {
  if (isCalendar(bytes)) return calendarGuess(bytes, path, project);
  const isUtf8 = charsetRefusal(bytes, 'utf-8', path) === undefined;
  const encoding = isUtf8 ? 'utf-8' : 'windows-1252';
  const unreadable = charsetRefusal(bytes, encoding, path);
  if (unreadable) return { wrong: unreadable };
  const id = nameOf(path) || 'bank';
  return { mapping: guessMapping(bytes, id, encoding, firstPhase(project), basename(path)) };
}

function calendarGuess(bytes: Uint8Array, path: string, project: ReadProject): Guess {
  const unreadable = calendarRefusal(bytes, path);
  if (unreadable) return { wrong: unreadable };
  const calendar = readCalendar(bytes);
  if ('wrong' in calendar) return { wrong: `${path}: ${calendar.wrong}` };
  const work = project.info?.value.work ?? [];
  const file = basename(path);
  const told = { id: nameOf(path) || 'calendar', file, phase: firstPhase(project) };
  return { mapping: guessCalendar(calendar, told, work) };
}

function nameOf(path: string): string {
  return basename(path)
    .toLowerCase()
    .replace(/\.[^.]*$|\d+/g, '')
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
}

function firstPhase(project: ReadProject): string {
  return project.lists.phases[0]?.value.id ?? 'phase';
}
