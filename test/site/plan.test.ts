import { describe, expect, test } from 'vitest';
import { dayOfNumber } from '../../src/plan/day-number.ts';
import { forecastHistory, forecastOn } from '../../src/plan/project-forecast.ts';
import { planOn } from '../../src/plan/project-plan.ts';
import { showDay } from '../../src/time/day.ts';
import { toldIn } from '../words/told.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const { book, page } = await openBuiltDemo();
const language = book.site?.language ?? '';

const frame = (path: string, label: string) => {
  const found = select(page(path).root, '.scroll').find(
    (element) => attribute(element, 'aria-label') === label,
  );
  if (found === undefined) throw new Error(`${path} has no table ${label}`);
  return found;
};
const rowsIn = (path: string, label: string) => select(frame(path, label), 'tr').slice(1);

describe.each(book.projects)('the plan of $id', (project) => {
  const plan = `${project.id}/plan/`;

  test('has every phase, with what was planned and worked', () => {
    const rows = rowsIn(plan, 'Phases').map(textOf);
    expect(rows).toHaveLength(project.phases.length);
    for (const [index, { name }] of project.phases.entries()) expect(rows[index]).toContain(name);
  });

  test('gives each wait an address of its own', () => {
    const ids = rowsIn(plan, 'Waits').map((row) => attribute(row, 'id'));
    expect(ids).toEqual(project.waits.map(({ id }) => id));
    expect(ids.length).toBeGreaterThan(2);
  });

  test('names each thing that holds a phase back, and how long it has', () => {
    const { holds } = planOn(project.now);
    const rows = holds.length === 0 ? [] : rowsIn(plan, 'What holds phases back');
    const shown = rows.map((row) => select(row, 'td').map(textOf));
    for (const { what, days } of holds)
      expect(shown.some((cells) => cells[1] === what && cells[3] === String(days))).toBe(true);
  });

  test('is one step from the project page and from the hours page', () => {
    for (const path of [`${project.id}/`, `${project.id}/hours/`]) {
      const links = select(page(path).root, 'a').map((link) => attribute(link, 'href'));
      expect(links.filter((href) => href?.endsWith(plan)).length).toBeGreaterThan(1);
    }
  });

  test('has a forecast for each entry, from a day or a reason', () => {
    const rows = rowsIn(`${project.id}/forecast/`, 'Forecasts by entry').map(textOf);
    expect(rows).toHaveLength(project.entries.length);
    for (const [index, { result }] of forecastHistory(project).entries())
      if (result.kind === 'not yet') expect(rows[index]).toContain(toldIn(result.reason));
  });
});

test('an entry keeps the forecast of its own day', () => {
  const shown = book.projects.flatMap((project) =>
    project.entries
      .filter(({ components }) => components.some(({ name }) => name === 'Forecast'))
      .map((entry) => ({ project, entry })),
  );
  expect(shown.length).toBeGreaterThan(2);
  for (const { project, entry } of shown) {
    const result = forecastOn(project.asOf(entry.date));
    if (result.kind !== 'forecast') throw new Error(`no forecast on ${entry.date}`);
    const [section] = select(page(`${project.id}/log/${entry.slug}/`).root, 'section.forecast');
    for (const day of [result.finish.low, result.finish.middle, result.finish.high])
      expect(section && textOf(section)).toContain(showDay(dayOfNumber(day), language));
  }
});

test('earned value has a definition and a working beside every figure', () => {
  for (const { id } of book.projects) {
    const rows = rowsIn(`${id}/earned-value/`, 'Earned value');
    expect(rows).toHaveLength(16);
    for (const row of rows)
      for (const cell of select(row, 'td')) expect(textOf(cell).length).toBeGreaterThan(0);
  }
});
