import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cell, contentDir, rowsOf, sumBy } from './raw-ledger.ts';

/** Texts of all entries by file name. */
function entriesOf(project: string): (readonly [string, string])[] {
  const dir = `${contentDir}${project}/entries/`;
  return readdirSync(dir).map((name) => [name, readFileSync(dir + name, 'utf8')]);
}

/** Words that a reader reads: no front matter, no components, no addresses of links. */
function wordsOf(text: string): number {
  const prose = text
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\]\([^)]*\)/g, ']');
  return prose.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

describe('the demo is large enough to show what the site is for', () => {
  test('the bus has 30 entries of 150 to 600 words', () => {
    const entries = entriesOf('lapwing');
    expect(entries).toHaveLength(30);
    const others = entries.filter(([, text]) => wordsOf(text) < 150 || wordsOf(text) > 600);
    expect(others.map(([name, text]) => [name, wordsOf(text)])).toEqual([]);
  });

  test('the bus has 9 phases, 60 specs and at least 250 readings of them', () => {
    expect(rowsOf('lapwing', 'phases')).toHaveLength(9);
    expect(rowsOf('lapwing', 'specs').length).toBeGreaterThanOrEqual(60);
    expect(rowsOf('lapwing', 'readings').length).toBeGreaterThanOrEqual(250);
  });

  test('the bus has at least 250 rows of hours and 180 of money, some of it in euros', () => {
    const costs = rowsOf('lapwing', 'costs');
    expect(rowsOf('lapwing', 'hours').length).toBeGreaterThanOrEqual(250);
    expect(costs.length).toBeGreaterThanOrEqual(180);
    const inEuros = costs.filter((row) => cell(row, 'amount').endsWith('EUR'));
    expect(inEuros.length).toBeGreaterThanOrEqual(5);
  });

  test('the bus has at least 120 parts, from the base machine, a donor, new and made', () => {
    const parts = rowsOf('lapwing', 'parts');
    const kinds = new Map(
      rowsOf('lapwing', 'sources').map((row) => [cell(row, 'id'), cell(row, 'kind')]),
    );
    expect(parts.length).toBeGreaterThanOrEqual(120);
    const byKind = sumBy(parts, (row) => kinds.get(cell(row, 'source')) ?? 'unknown');
    for (const kind of ['base', 'donor', 'new', 'made'])
      expect([kind, (byKind[kind] ?? 0) >= 20]).toEqual([kind, true]);
  });

  test('the lathe has 8 entries, micrometres and euros', () => {
    expect(entriesOf('ostermoor')).toHaveLength(8);
    const units = rowsOf('ostermoor', 'specs').map((row) => cell(row, 'unit'));
    expect(units.filter((unit) => unit === 'µm').length).toBeGreaterThanOrEqual(8);
    expect(readFileSync(`${contentDir}ostermoor/project.yaml`, 'utf8')).toMatch(/^currency: EUR$/m);
  });
});
