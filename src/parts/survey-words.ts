import { type Reader, showDifference, showMeasured } from '../measure/show.ts';
import type { Grade } from '../model/kinds.ts';
import { showWrittenDecimal } from '../units/written-decimal.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { Area, Graded, Test, Tried } from './grade.ts';
import { isOwnGrade, LIMITED } from './grade-scale.ts';
import type { RemainingChange } from './remaining.ts';

/** What a grade is called and what it means: the builder's own words, or ours for a grade of our own scale. */
export function wordsOfGrade(
  grade: Grade,
  { parts }: Words,
): { readonly name: string; readonly definition: string } {
  return isOwnGrade(grade) ? parts.survey.grades[grade.id] : grade;
}

/** A grade as it is printed: its name, `worn or to mend, undecided`, or `anything from worn to for a pattern, undecided`. */
export function gradeText({ grades }: Pick<Graded, 'grades'>, words: Words): string {
  const { undecidedOfTwo, undecidedOfMany } = words.parts.survey;
  const names = grades.map((grade) => wordsOfGrade(grade, words).name);
  const [first = '', last = first] = [names[0], names.at(-1)];
  if (names.length < 2) return first;
  return names.length === 2 ? undecidedOfTwo(first, last) : undecidedOfMany(first, last);
}

/** What a grade asks for, as short phrases. */
export function limitTexts(grade: Grade, language: string): string[] {
  const { limits } = wordsOf(language).parts.survey;
  const { remainingAtLeast, fillerAtMost, holesAtMost } = grade;
  const atMost = (limit: string, some: (limit: string) => string, none: string) =>
    Number(limit) === 0 ? none : some(showWrittenDecimal(limit, language));
  return [
    ...(remainingAtLeast ? [limits.remaining(showWrittenDecimal(remainingAtLeast, language))] : []),
    ...(fillerAtMost ? [atMost(fillerAtMost, limits.filler, limits.noFiller)] : []),
    ...(holesAtMost ? [atMost(holesAtMost, limits.holes, limits.noHoles)] : []),
  ];
}

/** Findings that a grade may have besides what its limits speak of. */
export function allowedText({ allows = [] }: Grade, { parts }: Words): string {
  const others = allows.filter((kind) => kind !== 'sound' && !LIMITED.includes(kind));
  return others.map((kind) => parts.survey.found[kind]).join(', ');
}

/** One limit of a grade and what came of it, as a sentence of its own. */
export function testText(test: Test, reader: Reader): string {
  const { found, tests } = wordsOf(reader.language).parts.survey;
  if (test.of === 'kinds') {
    const names = test.not.map((kind) => found[kind]).join(', ');
    return test.not.length > 0 ? tests.forbids(names) : tests.allowsOthers;
  }
  if (test.of === 'remaining') return remainingText(test, reader);
  return tests[test.of](
    areaText(test.area, reader.language),
    showWrittenDecimal(String(test.limit), reader.language),
    tests.verdicts[test.verdict],
  );
}

function remainingText(test: Test & { of: 'remaining' }, reader: Reader): string {
  const { tests } = wordsOf(reader.language).parts.survey;
  const { least, unread, limit, verdict } = test;
  if (least === undefined && !unread) return tests.thicknessNotAsked;
  const value = least ? tests.left(showMeasured(least, reader).text) : tests.notRead;
  const also = least && unread ? tests.thinUnread(value) : value;
  const known = least && least.U === undefined ? tests.withoutU(also) : also;
  const shown = showWrittenDecimal(String(limit), reader.language);
  return tests.thickness(known, shown, tests.verdicts[verdict]);
}

function areaText({ stated, found, unstated }: Area, language: string): string {
  const { tests } = wordsOf(language).parts.survey;
  if (!found) return tests.noArea;
  const share = showWrittenDecimal(String(Number(stated.toFixed(4))), language);
  if (!unstated) return tests.area(share);
  return stated > 0 ? tests.areaAndMore(share) : tests.areaNotStated;
}

/** The grades that a reader is told about: those that are possible, and the next better one, which was ruled out. */
export function toldOf({ tried, grades }: Graded): readonly Tried[] {
  const first = tried.findIndex(({ grade }) => grade === grades[0]);
  return tried.slice(Math.max(0, first - 1));
}

/** A change of the thickness left, with what its uncertainty allows to say. */
export function remainingChangeText(change: RemainingChange, language: string): string {
  const { changes } = wordsOf(language).parts.survey;
  const size = showDifference({ ...change, unit: '%', decimals: 0 }, language);
  if (change.changed === undefined) return changes.withoutU(size);
  return change.changed ? changes.changed(size) : changes.unchanged(size);
}
