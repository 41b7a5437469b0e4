import { knownIds } from '../check/known-ids.ts';
import type { ListKind } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import { addDays, type Day, parseDay } from '../time/day.ts';
import type { Fields } from './csv-append.ts';
import { requiredFields, shapeOf } from './kind-fields.ts';
import { lastTime, takenOver } from './last-time.ts';
import { placeWords } from './place-words.ts';

/** A row as far as it is known, and where its fields come from. */
export interface ReadyRow {
  readonly fields: Fields;
  /** Names of fields taken over from the last row. */
  readonly carried: readonly string[];
  /** Names of fields that a row needs and this one lacks. */
  readonly missing: readonly string[];
  /** Words that no field takes. */
  readonly left: readonly string[];
}

/** Makes a row of what was typed, the day, and what goes on from last time. */
export function readyRow(
  project: ReadProject,
  kind: ListKind,
  asked: { readonly words: readonly string[]; readonly fields: Fields; readonly today: Day },
): ReadyRow {
  const known = knownIds(project);
  const { fields: placed, left } = placeWords(kind, asked.words, asked.fields, known);
  const dated = { ...placed, ...dates(kind, placed, asked.today) };
  const over = takenOver(kind, dated, lastTime(project, kind, dated));
  const fields = { ...dated, ...over };
  const missing = requiredFields(kind).filter((name) => name !== 'id' && !fields[name]);
  return { fields, carried: Object.keys(over), missing, left };
}

/** The day of a row, and the day it was written down where that is a later one. */
function dates(kind: ListKind, { date, recorded, corrects }: Fields, today: Day): Fields {
  const shape = shapeOf(kind);
  if (shape.date === undefined) return {};
  const day = date === 'yesterday' ? addDays(today, -1) : (date ?? today);
  // A correction says when it was written, whichever day it is about.
  const isLater =
    shape.recorded !== undefined &&
    parseDay(day) !== undefined &&
    (day < today || corrects !== undefined);
  return { date: day, ...(isLater && !recorded ? { recorded: today } : {}) };
}

/** Fields that the check misses and the last row had: what one kind of row needs and another does not. */
export function alsoCarried(
  project: ReadProject,
  kind: ListKind,
  fields: Fields,
  problems: readonly Problem[],
): Fields {
  const last = lastTime(project, kind, fields);
  const missed = problems.map(({ message }) => /^"([\w-]+)" is missing/.exec(message)?.[1] ?? '');
  return takenOver(kind, fields, last, missed);
}
