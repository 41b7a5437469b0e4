import { describe, expect, test } from 'vitest';
import { gradeText, testText, toldOf } from '../../src/parts/survey-words.ts';
import { wordsOf } from '../../src/words/words.ts';
import { gradesOf, sillOn, surveyedProject } from './surveyed-project.ts';

const thin = (...readings: string[]) => ({ found: 'thin', readings });

describe('a limit of thickness, by the decision rule of ISO 14253-1 (lower limit 24.980 mm, U 0.004 mm; made-up inputs, no source)', () => {
  const lists = {
    grades: [
      { id: 'good', name: 'good', definition: 'Good.', 'remaining-at-least': '99.92' },
      { id: 'bad', name: 'bad', definition: 'Bad.' },
    ],
  };
  test.each([
    ['24.990', ['good']],
    ['24.984', ['good']],
    ['24.9835', ['good', 'bad']],
    ['24.978', ['good', 'bad']],
    ['24.976', ['good', 'bad']],
    ['24.9755', ['bad']],
  ])('of a reading of %s mm gives %j', (value, grades) => {
    const given = { nominal: '25 mm', U: '0.004 mm', lists, readings: { 'r-1': value } };
    expect(gradesOf({ ...given, findings: [thin('r-1')] })).toEqual(grades);
  });
});

test('thickness left is what sheet-loss says is not gone: 16 ga worn to 19 ga leaves 100 − 9000/299 % (Manufacturers’ Standard Gauge, inch column)', () => {
  const project = surveyedProject({
    nominal: '0.0598 in',
    readings: { 'r-1': String(0.0418 * 25.4) },
    findings: [thin('r-1')],
  });
  expect(sillOn(project).least?.value).toBeCloseTo(100 - 9000 / 299, 10);
});

describe('the grade of a part', () => {
  const U = '0.03 mm';
  test('is the best whose limits all hold, by the thinnest of its places', () => {
    const readings = { 'r-1': '1.45', 'r-2': '0.90' };
    expect(gradesOf({ U, readings, findings: [thin('r-1'), thin('r-2')] })).toEqual(['to-mend']);
    expect(gradesOf({ U, readings, findings: [thin('r-1')] })).toEqual(['as-made', 'light-wear']);
  });

  test('says both where U does not decide, with the reason', () => {
    const project = surveyedProject({ U, readings: { 'r-1': '1.05' }, findings: [thin('r-1')] });
    const { graded } = sillOn(project);
    expect(gradeText(graded, wordsOf('en'))).toBe('worn or to mend, undecided');
    const reader = { language: 'en', otherUnits: 'imperial' } as const;
    expect(
      toldOf(graded).map(({ grade, tests }) => [
        grade.id,
        ...tests.slice(0, 1).map((item) => testText(item, reader)),
      ]),
    ).toEqual([
      ['light-wear', '(70.0 ± 2.0\u00a0%) left, at least 85 %: does not meet'],
      ['worn', '(70.0 ± 2.0\u00a0%) left, at least 70 %: undecided'],
      ['to-mend', '(70.0 ± 2.0\u00a0%) left, at least 50 %: meets'],
    ]);
  });

  test('has its name in the language of the page on our own scale, and the builder’s on another', () => {
    const own = sillOn(surveyedProject({ findings: [{ found: 'wear' }] })).graded;
    expect(gradeText(own, wordsOf('de'))).toBe('leichte Spuren');
    const grades = [{ id: 'worn', name: 'keep', definition: 'Keep it.', allows: ['wear'] }];
    const lists = { grades };
    const theirs = sillOn(surveyedProject({ lists, findings: [{ found: 'wear' }] })).graded;
    expect(gradeText(theirs, wordsOf('de'))).toBe('keep');
  });

  test('tells its limits in the language of the reader', () => {
    const filler = { found: 'filler', area: '2.5' };
    const { graded } = sillOn(surveyedProject({ findings: [filler] }));
    const reader = { language: 'de-DE', otherUnits: 'imperial' } as const;
    const [, worn] = toldOf(graded);
    expect(worn?.tests.slice(0, 2).map((item) => testText(item, reader))).toEqual([
      'Dicke: nicht gemessen, daher gilt die Grenze nicht',
      'Spachtel: 2,5 % der Fläche, höchstens 5 %: eingehalten',
    ]);
  });

  test('is open down to the last where something thin was not read, or nothing is known of U', () => {
    const all = ['as-made', 'light-wear', 'worn', 'to-mend', 'to-rebuild', 'pattern'];
    expect(gradesOf({ findings: [thin()] })).toEqual(all);
    expect(gradesOf({ readings: { 'r-1': '1.5' }, findings: [thin('r-1')] })).toEqual(all);
  });

  test('adds up areas of filler, and takes those that nobody stated for open', () => {
    const filler = (area?: string) => ({ found: 'filler', ...(area ? { area } : {}) });
    expect(gradesOf({ findings: [filler('3'), filler('2')] })).toEqual(['worn']);
    expect(gradesOf({ findings: [filler('3'), filler('2.1')] })).toEqual(['to-mend']);
    expect(gradesOf({ findings: [filler('6'), filler()] })).toEqual([
      'to-mend',
      'to-rebuild',
      'pattern',
    ]);
  });

  test('asks what else was found, and the last one takes everything', () => {
    expect(gradesOf({ findings: [{ found: 'sound' }] })).toEqual(['as-made']);
    expect(gradesOf({ findings: [{ found: 'wear' }] })).toEqual(['light-wear']);
    expect(gradesOf({ findings: [{ found: 'crack' }] })).toEqual(['to-mend']);
    expect(gradesOf({ findings: [{ found: 'missing' }] })).toEqual(['pattern']);
    expect(gradesOf({ findings: [{ found: 'perforation', area: '30' }] })).toEqual(['pattern']);
  });

  test('goes by the project’s own scale where it has one', () => {
    const grades = [
      { id: 'keep', name: 'keep', definition: 'Keep it.', 'holes-at-most': '0', allows: ['wear'] },
      { id: 'skip', name: 'skip', definition: 'Into the skip.', 'holes-at-most': '50' },
    ];
    const found = (finding: string) =>
      gradesOf({ lists: { grades }, findings: [{ found: finding }] });
    expect(found('wear')).toEqual(['keep']);
    expect(found('crack')).toEqual(['skip']);
  });

  test('follows a reading to its correction from the day that was written down', () => {
    const reading = {
      date: '2025-03-01',
      spec: 'sheet',
      state: 'as-found',
      unit: 'mm',
      instrument: 'gauge',
    };
    const readings = [
      { ...reading, id: 'r-1', values: '1.40' },
      {
        ...reading,
        id: 'r-2',
        values: '0.80',
        corrects: 'r-1',
        because: 'Misread',
        recorded: '2025-05-01',
      },
    ];
    const project = surveyedProject({ U, lists: { readings }, findings: [thin('r-1')] });
    expect(sillOn(project, '2025-04-30').least?.reading.id).toBe('r-1');
    expect(sillOn(project, '2025-05-01').least?.reading.id).toBe('r-2');
  });
});
