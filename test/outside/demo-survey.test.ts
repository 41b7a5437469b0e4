import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { compareCandidates, subjectsOn } from '../../src/parts/comparison.ts';
import { surveysOn } from '../../src/parts/survey.ts';
import { cell, contentDir, listIn, minutesOf, type Row, rowsOf } from './raw-ledger.ts';

// The demo's survey and choices a second way: from the raw files, with nothing of src/ but the results that are compared.

const book = await openBook(contentDir, { now: new Date('2026-11-01T12:00:00Z') });
const project = book.project('lapwing');
if (!project) throw new Error('the demo is missing');

const by = (rows: readonly Row[]) => new Map(rows.map((row) => [cell(row, 'id'), row]));
const readings = by(rowsOf('lapwing', 'readings'));
const specs = by(rowsOf('lapwing', 'specs'));
const parts = by(rowsOf('lapwing', 'parts'));
const findings = rowsOf('lapwing', 'findings');

/** Millimetres of a nominal; an inch is 25.4 mm by definition. */
function nominalOf(spec: Row | undefined): number {
  const [size, unit] = cell(spec ?? {}, 'nominal').split(' ');
  return Number(size) * (unit === 'in' ? 25.4 : 1);
}

function shareLeft(id: string): number {
  const reading = readings.get(id) ?? {};
  const values = listIn(reading, 'values').map(Number);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return (100 * mean) / nominalOf(specs.get(cell(reading, 'spec')));
}

const versionOf = (row: Row) => {
  const part = cell(row, 'part');
  return [
    cell(row, 'survey'),
    part,
    cell(row, 'source') || cell(parts.get(part) ?? {}, 'source'),
  ].join(' ');
};
const shown = new Map(
  surveysOn(project, project.lastDay).flatMap(({ survey, parts: all }) =>
    all.map((item) => [[survey.id, item.part.id, item.source].join(' '), item] as const),
  ),
);

describe('the survey of the demo', () => {
  test('has every finding, and the least thickness left of every part that was read', () => {
    const groups = Map.groupBy(findings, versionOf);
    expect([...shown.keys()].sort()).toEqual([...groups.keys()].sort());
    for (const [key, rows] of groups) {
      const shares = rows.flatMap((row) => listIn(row, 'readings').map(shareLeft));
      const least = shown.get(key)?.least?.value;
      expect(shown.get(key)?.found).toHaveLength(rows.length);
      if (shares.length === 0) expect(least).toBeUndefined();
      else expect(least).toBeCloseTo(Math.min(...shares), 9);
    }
  });

  test('has the U of the worst place of the left sill: repeats 0.44 0.41 0.46 0.43 0.40 mm, step 0.01 mm, certificate 0.02 mm', () => {
    // s/√5 = 0.010677, 0.01/√12 = 0.002887, 0.02/2 = 0.01 → u = 0.014911; ν = 15.2 → 15, t95 = 2.1314 (TN 1297, B.1: 2.13).
    const sill = shown.get('first sill-left-outer base');
    expect(sill?.least?.value).toBeCloseTo((100 * 0.428) / 1.5, 9);
    expect(sill?.least?.U).toBeCloseTo((100 * 0.014911 * 2.1314) / 1.5, 2);
    expect(sill?.graded.grades.map(({ id }) => id)).toEqual(['to-rebuild', 'pattern']);
  });

  test('grades what is far from every limit as the table of the scale says', () => {
    const grade = (key: string) => shown.get(key)?.graded.grades.map(({ id }) => id);
    expect(grade('first floor-panel-4 base')).toEqual(['worn']);
    expect(grade('first floor-panel-6 base')).toEqual(['to-mend']);
    expect(grade('bare sill-right-outer base')).toEqual(['to-rebuild']);
    expect(grade('first floor-rib-9 base')).toEqual(['pattern']);
  });
});

describe('the choices of the demo', () => {
  const candidates = rowsOf('lapwing', 'candidates');
  const pence = (row: Row) => Math.round(Number(cell(row, 'price') || cell(row, 'value')) * 100);
  const total = (rows: readonly Row[], sizeOf: (row: Row) => number) =>
    rows.reduce((sum, row) => sum + sizeOf(row), 0);
  const comparisons = subjectsOn(project, project.lastDay).map((subject) =>
    compareCandidates(project, subject, { day: project.lastDay, language: 'en' }),
  );

  test('add each way to the left floor up', () => {
    const [floor] = comparisons;
    const group = rowsOf('lapwing', 'groups')[0] ?? {};
    for (const { source, money, hours } of floor?.ways ?? []) {
      const rows = candidates.filter(
        (row) =>
          listIn(group, 'parts').includes(cell(row, 'part')) &&
          cell(row, 'source') === (source?.id ?? 'made'),
      );
      expect([money?.minor, hours]).toEqual([total(rows, pence), total(rows, minutesOf)]);
    }
    expect(floor?.ways).toHaveLength(4);
  });

  test('hold a part with three candidates whose chosen one is not the cheapest', () => {
    const door = comparisons.find(({ subject }) => subject.id === 'door-side')?.parts[0];
    const money = door?.weighed.map(({ cost }) => cost.money?.minor ?? 0) ?? [];
    const chosen = door?.weighed.find((item) => item.chosen);
    expect(money).toHaveLength(3);
    expect(chosen?.cost.money?.minor).toBeGreaterThan(Math.min(...money));
    expect(chosen?.chosen?.because).not.toBe('');
  });

  test('keep a change of mind', () => {
    const sill = comparisons.find(({ subject }) => subject.id === 'sill-right-outer')?.parts[0];
    expect(sill?.decisions.map(({ choice, changed }) => [choice.id, changed])).toEqual([
      ['ch-04', undefined],
      ['ch-01', '2025-11-22'],
    ]);
  });
});
