import { rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Day } from '../time/day.ts';
import type { Rule } from './rule.ts';

/** What is recorded has happened: no row, entry or part step lies in the future. Plans may. */
export const nothingFromTheFuture: Rule = ({ project, today }) => {
  const dated: { raw: RawRecord; days: Readonly<Record<string, Day | undefined>> }[] = [];
  for (const kind of rowKinds) {
    for (const { raw, value } of project.lists[kind]) {
      const { date, recorded } = value as { date?: Day; recorded?: Day };
      dated.push({ raw, days: { date, recorded } });
    }
  }
  for (const { raw, value } of project.lists.parts) dated.push({ raw, days: partSteps(value) });
  for (const { raw, value } of project.lists.surveys)
    dated.push({ raw, days: { date: value.date } });
  for (const { raw, value } of project.lists.preparations)
    dated.push({ raw, days: { back: value.back } });
  for (const { raw, value } of project.lists.phases)
    dated.push({ raw, days: { finished: value.finished } });
  for (const { raw, value } of project.entries) dated.push({ raw, days: { date: value.date } });

  const told = dated.flatMap(({ raw, days }) =>
    Object.entries(days).flatMap(([field, day]) => (day === undefined ? [] : { raw, field, day })),
  );
  const future = told.filter(({ day }) => day > today);
  if (isClockWrong(project, today, future.length, told.length))
    return [wrongClock(project, today, future.length)];
  return future.map(({ raw, field, day }) =>
    problemAt(
      raw.placeOf([field]),
      'date/future',
      `${field}: "${day}" is in the future (today is ${today})`,
      sameDayEarlier(day, today),
    ),
  );
};

/** Marks are never of a day to come, and rows seldom: where a mark is, or most rows are, the clock is what is wrong. */
function isClockWrong({ marks }: ReadProject, today: Day, future: number, all: number): boolean {
  const marked = [...(marks.marks ?? '').matchAll(/^date (\d{4}-\d{2}-\d{2})$/gm)];
  return marked.some(([, day = '']) => day > today) || (future >= 5 && future > all / 2);
}

function wrongClock({ id }: ReadProject, today: Day, future: number): Problem {
  return problemAt(
    { file: `${id}/project.yaml`, line: 1, column: 1 },
    'date/clock',
    `this machine says that today is ${today}, and ${future} dates of rows are later, or a mark is`,
    'set its clock',
  );
}

function sameDayEarlier(day: Day, today: Day): string {
  const earlier = `${Number(day.slice(0, 4)) - 1}${day.slice(4)}`;
  return earlier <= today
    ? `write the day it happened; "${earlier}"?`
    : 'write the day it happened';
}

type Steps = Readonly<
  Record<'wanted' | 'ordered' | 'got' | 'fitted' | 'scrapped' | 'sold', Day | undefined>
>;

function partSteps({
  wanted,
  ordered,
  got,
  fitted,
  scrapped,
  sold,
}: { [Step in keyof Steps]?: Day | undefined }): Steps {
  return { wanted, ordered, got, fitted, scrapped, sold };
}

/** Kinds whose rows may be written down later than the day that they are about. */
const WRITTEN = ['hours', 'costs', 'orders', 'budgets', 'readings', 'rates', 'searches'] as const;

/** Dates that follow one another do: a part is wanted before it is fitted, a phase starts before it ends, a row is written down after the day. */
export const datesAreInOrder: Rule = ({ project }) => {
  const problems: Problem[] = [];
  const mustFollow = (raw: RawRecord, steps: readonly (readonly [string, Day | undefined])[]) => {
    const given = steps.filter((step): step is readonly [string, Day] => step[1] !== undefined);
    given.slice(1).forEach(([field, day], index) => {
      const [earlierField, earlier] = given[index] ?? [field, day];
      if (day < earlier)
        problems.push(
          problemAt(
            raw.placeOf([field]),
            'date/order',
            `${field}: "${day}" is before ${earlierField} (${earlier})`,
            'swap them, or correct the wrong one',
          ),
        );
    });
  };

  for (const { raw, value } of project.lists.parts)
    mustFollow(raw, Object.entries(partSteps({ ...value, scrapped: undefined, sold: undefined })));
  for (const { raw, value } of project.lists.preparations)
    for (const step of ['due', 'back'] as const)
      mustFollow(raw, [
        ['date', value.date],
        [step, value[step]],
      ]);
  for (const { raw, value } of project.lists.phases)
    mustFollow(raw, [
      ['planned-start', value.plannedStart],
      ['planned-finish', value.plannedFinish],
    ]);
  for (const { raw, value } of project.lists.instruments)
    mustFollow(raw, [
      ['calibrated', value.calibrated],
      ['calibration-due', value.calibrationDue],
    ]);
  for (const kind of WRITTEN) {
    for (const { raw, value } of project.lists[kind])
      mustFollow(raw, [
        ['date', value.date],
        ['recorded', value.recorded],
      ]);
  }
  return problems;
};
