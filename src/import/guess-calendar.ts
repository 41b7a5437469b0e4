import { stringify } from 'yaml';
import type { ProjectInfo } from '../model/kinds.ts';
import type { Calendar } from './calendar.ts';
import { textsOf } from './calendar-lines.ts';

/** A mapping for a calendar, with a rule for each of its categories, to be looked over and pasted into `imports.yaml`. */
export function guessCalendar(
  { components }: Calendar,
  { id, file, phase }: { readonly id: string; readonly file: string; readonly phase: string },
  work: ProjectInfo['work'],
): string {
  const categories = components
    .filter(({ name }) => name === 'VEVENT')
    .flatMap(({ properties }) =>
      properties.filter(({ name }) => name === 'CATEGORIES').flatMap(({ value }) => textsOf(value)),
    );
  const set = { phase, work: work[0] ?? 'work' };
  const words = [...new Set(categories.map((one) => one.trim()))].filter((one) => one !== '');
  const mapping = {
    id,
    files: file.replace(/\d+/g, '*'),
    kind: 'hours',
    columns: { what: 'SUMMARY' },
    rules: [
      { has: 'DENTIST', skip: 'no work on this machine' },
      ...(words.length > 0 ? words : ['MACHINE']).map((has) => ({
        column: words.length > 0 ? 'CATEGORIES' : 'SUMMARY',
        has,
        set,
      })),
    ],
  };
  return stringify([mapping], { lineWidth: 0, aliasDuplicateObjects: false });
}
