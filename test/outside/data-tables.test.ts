import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { Breakdown } from '../../src/book/figure.ts';
import type { Money } from '../../src/money/money.ts';
import { demoData } from './demo-data.ts';
import { loadTables, noPython } from './load-tables.ts';

const demo = await demoData();

const MONEY_BY_CATEGORY = `SELECT category, sum(counted) FROM costs WHERE in_totals = 'true' GROUP BY category`;
const MONEY_BY_PHASE = `SELECT coalesce(p.phase, 'none'), sum(coalesce(p.counted, costs.counted))
  FROM costs LEFT JOIN cost_phases p ON costs.id = p.cost WHERE in_totals = 'true' GROUP BY p.phase`;
const MONEY_BY_SOURCE = `SELECT coalesce(source, 'none'), sum(counted) FROM costs WHERE in_totals = 'true' GROUP BY source`;
const HOURS_BY_PHASE = `SELECT phase, sum(minutes) FROM hours WHERE in_totals = 'true' GROUP BY phase`;
const HOURS_BY_WORK = `SELECT work, sum(minutes) FROM hours WHERE in_totals = 'true' GROUP BY work`;
const MEAN_OF_READINGS = `SELECT reading, avg(value) FROM reading_values WHERE counts = 'true' GROUP BY reading`;
const QUERIES = [MONEY_BY_CATEGORY, MONEY_BY_PHASE, MONEY_BY_SOURCE, HOURS_BY_PHASE, HOURS_BY_WORK];

const moneyIn = ({ groups }: Breakdown<Money>) =>
  Object.fromEntries(groups.map(({ key, figure }) => [key, figure.value.minor]));
const minutesIn = ({ groups }: Breakdown<number>) =>
  Object.fromEntries(groups.map(({ key, figure }) => [key, figure.value]));

describe.skipIf(noPython).each(demo)('the tables of $id, loaded by Python into SQLite', (data) => {
  const { now, readings } = data.project;
  const loaded = loadTables(data.files, [...QUERIES, MEAN_OF_READINGS]);

  test('keep every key, type and constraint of their descriptor', () => {
    expect(loaded.problems).toEqual([]);
    expect(Object.keys(loaded.cells)).toHaveLength(data.made.tables.length);
  });

  test('sum up to the totals of the site', () => {
    const answers = loaded.answers.map((rows) => Object.fromEntries(rows));
    expect(answers.slice(0, QUERIES.length)).toEqual([
      moneyIn(now.costsByCategory),
      moneyIn(now.costsByPhase),
      moneyIn(now.costsBySource),
      minutesIn(now.hoursByPhase),
      minutesIn(now.hoursByWork),
    ]);
  });

  test('give every reading the mean that the site gives it', () => {
    const means = Object.fromEntries(loaded.answers.at(-1) ?? []);
    expect(Object.keys(means)).toHaveLength(readings.length);
    // The demo reads everything in the unit of its spec.
    for (const { id, value } of readings) expect(means[id]).toBeCloseTo(value, 9);
  });

  test('have the same cells for csv-parse', () => {
    for (const { table, text } of data.made.tables)
      expect([table.name, parse(text)]).toEqual([table.name, loaded.cells[table.name]]);
  });
});

// RFC 4180 §2: CRLF ends every line, the last too.
test.each(demo)(
  'every line of the tables of $id ends in CR LF, and no file has a mark at its start',
  ({ made }) => {
    for (const { text } of made.tables) {
      const outside = text.replaceAll(/"(?:[^"]|"")*"/g, '');
      expect(outside.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      expect(text.endsWith('\r\n')).toBe(true);
      expect(text.startsWith('\ufeff')).toBe(false);
    }
  },
);

describe.skipIf(noPython)('the database', () => {
  const files = demo[0]?.files ?? {};
  const withChange = (name: string, from: string | RegExp, to: string) => {
    const text = files[name] ?? '';
    const changed = text.replace(from, to);
    if (changed === text) throw new Error(`nothing to change in ${name}`);
    return { ...files, [name]: changed };
  };

  test.each([
    ['an id that stands twice', 'rates.csv', 'x-2,', 'x-1,', /UNIQUE constraint failed: rates.id/],
    [
      'a phase that there is not',
      'cost_phases.csv',
      ',survey,',
      ',sirvey,',
      /names nothing in phases/,
    ],
    [
      'a day that there is not',
      'hours.csv',
      '2025-07-26',
      '2025-02-30',
      /CHECK constraint failed: date type/,
    ],
    [
      'a word that is not in its list',
      'costs.csv',
      ',vehicle,',
      ',vessel,',
      /CHECK constraint failed: category enum/,
    ],
    [
      'an empty cell that must not be',
      'hours.csv',
      ',165,',
      ',,',
      /NOT NULL constraint failed: hours.minutes/,
    ],
    [
      'text for a number',
      'costs.csv',
      ',1650.00,',
      ',much,',
      /CHECK constraint failed: amount type/,
    ],
    [
      'a number below its least',
      'hours.csv',
      ',165,',
      ',-165,',
      /CHECK constraint failed: minutes minimum/,
    ],
    [
      'an id that is no id',
      'sources.csv',
      '\nmade,',
      '\nMade it,',
      /CHECK constraint failed: id pattern/,
    ],
    ['a quote where none may be', 'hours.csv', 'h-001,', '"h"001,', /hours: .*expected/],
    ['a row that is too short', 'rates.csv', 'x-1,2025-09-15,', 'x-1,', /rates: .*values/],
    ['another name of a column', 'work.csv', 'id', 'name', /work: other columns/],
  ])('refuses %s', (_, name, from, to, problem) => {
    const { problems } = loadTables(withChange(name, from, to));
    expect(problems.join('\n')).toMatch(problem);
  });

  test('gives another sum when a cost is a penny dearer or an hours row a minute longer', () => {
    const honest = loadTables(files, QUERIES).answers;
    const dearer = withChange('costs.csv', ',165000,true', ',165001,true');
    const longer = withChange('hours.csv', ',165,', ',166,');
    expect(loadTables(dearer, QUERIES).answers[0]).not.toEqual(honest[0]);
    expect(loadTables(longer, QUERIES).answers[3]).not.toEqual(honest[3]);
  });
});
