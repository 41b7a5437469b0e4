import { basename } from 'node:path';
import { isCalendar, readCalendar } from '../import/calendar.ts';
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

function guessFor(
  bytes: Uint8Array,
  path: string,
  project: ReadProject,
): { mapping: string } | { wrong: string } {
  const isUtf8 = charsetRefusal(bytes, 'utf-8', path) === undefined;
  const encoding = isUtf8 ? 'utf-8' : 'windows-1252';
  const unreadable = charsetRefusal(bytes, encoding, path);
  if (unreadable) return { wrong: unreadable };
  const file = basename(path);
  const name = file
    .toLowerCase()
    .replace(/\.[^.]*$|\d+/g, '')
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
  const phase = project.lists.phases[0]?.value.id ?? 'phase';
  if (!isCalendar(bytes))
    return { mapping: guessMapping(bytes, name || 'bank', encoding, phase, file) };
  const calendar = readCalendar(bytes);
  if ('wrong' in calendar) return { wrong: `${path}: ${calendar.wrong}` };
  const work = project.info?.value.work ?? [];
  return { mapping: guessCalendar(calendar, { id: name || 'calendar', file, phase }, work) };
}
