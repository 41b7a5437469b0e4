import { expect, test } from 'vitest';
import { ownGrades } from '../../src/parts/grade-scale.ts';
import { surveysOn } from '../../src/parts/survey.ts';
import { changesSince } from '../../src/parts/survey-change.ts';
import { remainingChangeText } from '../../src/parts/survey-words.ts';
import { type SurveyedLists, surveyedProject } from './surveyed-project.ts';

const surveys = [
  { id: 'first', name: 'As found', date: '2025-03-01' },
  { id: 'bare', name: 'Bare', date: '2025-04-01' },
];
const later = { date: '2025-04-01', survey: 'bare' };

function changes(given: SurveyedLists) {
  const project = surveyedProject({ U: '0.03 mm', lists: { surveys }, ...given });
  const [first, bare] = surveysOn(project, project.lastDay);
  if (!first || !bare) throw new Error('two surveys are needed');
  return changesSince([first], bare, { scale: ownGrades, base: ['base'] });
}

const thin = (reading: string) => ({ found: 'thin', readings: [reading] });

test('a part is worse where its grade fell, and thinner where the difference is more than its own U', () => {
  const readings = { 'r-1': '1.20', 'r-2': '0.60' };
  const [change] = changes({ readings, findings: [thin('r-1'), { ...thin('r-2'), ...later }] });
  expect(change).toMatchObject({ turn: 'worse', replaced: false });
  // −40 points; U of the difference is √2 · 2 points, the gauge's own for each reading.
  expect(change?.remaining?.U).toBeCloseTo(Math.SQRT2 * 2, 6);
  expect(change?.remaining && remainingChangeText(change.remaining, 'en')).toBe(
    '(−40.0 ± 2.8\u00a0%), changed',
  );
});

test('a difference within its U is none, and a grade that U leaves open is undecided', () => {
  const readings = { 'r-1': '1.20', 'r-2': '1.19', 'r-3': '1.05' };
  const [same] = changes({ readings, findings: [thin('r-1'), { ...thin('r-2'), ...later }] });
  expect(same).toMatchObject({ turn: 'same', remaining: { changed: false } });
  const [open] = changes({ readings, findings: [thin('r-1'), { ...thin('r-3'), ...later }] });
  expect(open).toMatchObject({ turn: 'undecided', remaining: { changed: true } });
});

test('another version is held against the one of the base machine, and said to be another', () => {
  const findings = [
    { found: 'crack' },
    { found: 'sound', source: 'donor' },
    { found: 'sound', source: 'made', ...later },
  ];
  const [change] = changes({ findings });
  expect(change).toMatchObject({ turn: 'better', replaced: true, before: { source: 'base' } });
});
