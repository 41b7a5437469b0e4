import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareCandidates, subjectsOn } from '../../src/parts/comparison.ts';
import { ownGrades } from '../../src/parts/grade-scale.ts';
import { surveysOn } from '../../src/parts/survey.ts';
import { addDays, type Day } from '../../src/time/day.ts';
import type { Written } from '../book/project-of.ts';
import { sillOn, surveyedProject } from '../parts/surveyed-project.ts';

const START = '2025-03-01' as Day;
const thickness = fc
  .integer({ min: 10, max: 160 })
  .map((hundredths) => (hundredths / 100).toFixed(2));

/** Places of the best and the worst grade that are possible. */
function rangeOf(values: readonly string[], extra: readonly Written[] = []): [number, number] {
  const readings = Object.fromEntries(values.map((value, index) => [`r-${index}`, value]));
  const findings = [
    ...Object.keys(readings).map((id) => ({ found: 'thin', readings: [id] })),
    ...extra,
  ];
  const { grades } = sillOn(surveyedProject({ U: '0.04 mm', readings, findings })).graded;
  const places = grades.map((grade) => ownGrades.indexOf(grade));
  return [Math.min(...places), Math.max(...places)];
}

describe('grades', () => {
  test('never become better by a thinner reading, one more of them, or more filler', () => {
    fc.assert(
      fc.property(
        fc.array(thickness, { minLength: 1, maxLength: 4 }),
        thickness,
        fc.integer({ min: 0, max: 100 }),
        (values, other, area) => {
          const [best, worst] = rangeOf(values);
          const thinner = [String(Math.min(Number(other), Number(values[0]))), ...values.slice(1)];
          for (const [b, w] of [
            rangeOf(thinner),
            rangeOf([...values, other]),
            rangeOf(values, [{ found: 'filler', area: String(area) }]),
          ]) {
            expect(b).toBeGreaterThanOrEqual(best);
            expect(w).toBeGreaterThanOrEqual(worst);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

interface Step {
  readonly after: number;
  readonly cents: number;
  readonly minutes: number;
  readonly source: string;
  readonly part: string;
  readonly chosen: boolean;
}

const step: fc.Arbitrary<Step> = fc.record({
  after: fc.integer({ min: 0, max: 30 }),
  cents: fc.integer({ min: 0, max: 99_999 }),
  minutes: fc.integer({ min: 0, max: 6000 }),
  source: fc.constantFrom('base', 'donor', 'made'),
  part: fc.constantFrom('sill', 'floor'),
  chosen: fc.boolean(),
});

function decided(steps: readonly Step[]) {
  const dated = steps.map((item, index) => ({
    ...item,
    id: `ca-${index}`,
    date: addDays(START, item.after),
  }));
  return surveyedProject({
    project: { rules: { labourRate: '17.35' } },
    lists: {
      groups: [{ id: 'edge', name: 'Edge', parts: ['sill', 'floor'], because: 'One seam.' }],
      candidates: dated.map(({ id, date, cents, minutes, source, part }) => ({
        ...{ id, date, part, source, availability: 'in-hand', risk: 'low' },
        ...{ price: (cents / 100).toFixed(2), hours: `${minutes} min` },
      })),
      choices: dated.flatMap(({ id, date, chosen }, index) =>
        chosen ? [{ id: `ch-${index}`, date, candidates: [id], because: 'It was.' }] : [],
      ),
      findings: dated.map(({ date, source, part }, index) => ({
        ...{ id: `f-${index}`, date, survey: 'first', part, source, found: 'wear' },
      })),
    },
  });
}

/** All that the pages say on a day. */
function told(steps: readonly Step[], day: Day): string {
  const project = decided(steps);
  const comparing = { day, language: 'en' };
  return JSON.stringify([
    surveysOn(project, day),
    subjectsOn(project, day).map((subject) => compareCandidates(project, subject, comparing)),
  ]);
}

describe('surveys and choices', () => {
  test('as of a day are not changed by rows of later days', () => {
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 0, max: 29 }),
        (steps, at) => {
          const sorted = steps.toSorted((a, b) => a.after - b.after);
          const known = sorted.filter(({ after }) => after <= at);
          expect(told(sorted, addDays(START, at))).toBe(told(known, addDays(START, at)));
        },
      ),
      { numRuns: 80 },
    );
  });

  test('add up: each candidate to its money and hours, each way to its members', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 8 }), (steps) => {
        const project = decided(steps);
        const [subject] = subjectsOn(project, project.lastDay);
        if (!subject) throw new Error('there is nothing to compare');
        const { ways } = compareCandidates(project, subject, {
          day: project.lastDay,
          language: 'en',
        });
        for (const { members, money, together, hours } of ways) {
          const priced = members.map(({ candidate }) =>
            Math.round(Number(candidate.price?.decimal) * 100),
          );
          const sumOf = (values: readonly number[]) =>
            values.reduce((all, value) => all + value, 0);
          // Whole pence, halves up, in whole numbers: minutes · 1735 / 60.
          const labour = members.map(({ candidate }) =>
            Math.floor(((candidate.hours ?? 0) * 1735 * 2 + 60) / 120),
          );
          expect(money?.minor).toBe(sumOf(priced));
          expect(hours).toBe(sumOf(members.map(({ candidate }) => candidate.hours ?? 0)));
          expect(together?.minor).toBe(sumOf(priced) + sumOf(labour));
        }
      }),
      { numRuns: 80 },
    );
  });
});
