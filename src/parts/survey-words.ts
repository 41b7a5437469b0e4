import { type Reader, showDifference, showMeasured } from '../measure/show.ts';
import type { Grade } from '../model/kinds.ts';
import type { Area, Graded, Test, Tried } from './grade.ts';
import { LIMITED } from './grade-scale.ts';
import type { RemainingChange } from './remaining.ts';

/** Said wherever findings about a body or a frame stand. */
export const STRUCTURE_CAUTION =
  'A grade says what was found, and not that a part is safe. What structure may lack, and how it is mended, is for a qualified person and the local rules to decide.';

/** What a look can find, in readers' words. */
export const foundNames: Readonly<Record<string, string>> = {
  sound: 'sound',
  wear: 'wear',
  corrosion: 'surface rust',
  thin: 'thin',
  filler: 'filler',
  perforation: 'rusted through',
  crack: 'crack',
  bent: 'bent',
  leak: 'leak',
  seized: 'seized',
  missing: 'missing',
};

/** A grade as it is printed: its name, `worn or to mend, undecided`, or `anything from worn to for a pattern, undecided`. */
export function gradeText({ grades }: Pick<Graded, 'grades'>): string {
  const names = grades.map(({ name }) => name);
  if (names.length === 1) return names[0] ?? '';
  if (names.length === 2) return `${names.join(' or ')}, undecided`;
  return `anything from ${names[0]} to ${names.at(-1)}, undecided`;
}

/** What a grade asks for, as short phrases. */
export function limitTexts(grade: Grade): string[] {
  const { remainingAtLeast, fillerAtMost, holesAtMost } = grade;
  const atMost = (limit: string, what: string, none: string) =>
    Number(limit) === 0 ? none : `${what} at most ${limit} %`;
  return [
    ...(remainingAtLeast ? [`at least ${remainingAtLeast} % of the thickness left`] : []),
    ...(fillerAtMost ? [atMost(fillerAtMost, 'filler', 'no filler')] : []),
    ...(holesAtMost ? [atMost(holesAtMost, 'rusted through', 'nothing rusted through')] : []),
  ];
}

/** Findings that a grade may have besides what its limits speak of. */
export function allowedText({ allows = [] }: Grade): string {
  const others = allows.filter((kind) => kind !== 'sound' && !LIMITED.includes(kind));
  return others.map((kind) => foundNames[kind] ?? kind).join(', ');
}

/** One limit of a grade and what came of it, as a sentence of its own. */
export function testText(test: Test, reader: Reader): string {
  if (test.of === 'kinds') {
    const names = test.not.map((kind) => foundNames[kind] ?? kind).join(', ');
    return test.not.length > 0 ? `does not allow: ${names}` : 'other findings: allowed';
  }
  if (test.of === 'remaining') return remainingText(test, reader);
  const what = test.of === 'filler' ? 'filler' : 'rusted through';
  return `${what}: ${areaText(test.area)}, at most ${test.limit} %: ${test.verdict}`;
}

function remainingText(test: Test & { of: 'remaining' }, reader: Reader): string {
  const { least, unread, limit, verdict } = test;
  if (least === undefined && !unread) return 'thickness: not read, so the limit is not asked';
  const value = least ? `${showMeasured(least, reader).text} left` : 'thickness not read';
  const also = least && unread ? ', and thin where nobody read it' : '';
  const unknown = least && least.U === undefined ? ', U not known' : '';
  return `${value}${also}${unknown}, at least ${limit} %: ${verdict}`;
}

function areaText({ stated, found, unstated }: Area): string {
  if (!found) return 'none';
  const size = `${Number(stated.toFixed(4))} % of the area`;
  if (!unstated) return size;
  return stated > 0 ? `${size} and more` : 'on a share not stated';
}

/** The grades that a reader is told about: those that are possible, and the next better one, which was ruled out. */
export function toldOf({ tried, grades }: Graded): readonly Tried[] {
  const first = tried.findIndex(({ grade }) => grade === grades[0]);
  return tried.slice(Math.max(0, first - 1));
}

/** A change of the thickness left, with what its uncertainty allows to say. */
export function remainingChangeText(change: RemainingChange, language: string): string {
  const size = showDifference({ ...change, unit: '%', decimals: 0 }, language);
  if (change.changed === undefined) return `(${size}), uncertainty not known`;
  return `(${size}), ${change.changed ? 'changed' : 'no measurable change'}`;
}
