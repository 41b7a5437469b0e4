import type { Breakdown } from '../book/figure.ts';
import type { Project, View } from '../book/types.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import { intervalOf } from '../measure/value-on-day.ts';
import type { SpecValue } from '../measure/worked.ts';
import type { Money } from '../money/money.ts';
import type { Minutes } from '../time/duration.ts';
import { ucumOf } from '../units/unit.ts';
import { say } from '../words/said.ts';
import { wordsOf } from '../words/words.ts';
import type { Table } from './data/table.ts';

/** Data is the same whatever language the pages are in. */
const words = wordsOf('en');

/** The whole book of a project as one object: who and what, every table, every total with the rows behind it, every value of a spec. */
export function bookJson(project: Project, tables: readonly Table[], schema: string): object {
  const { name, summary, machine, builder, status, finished } = project.info;
  const { maker, model, year, kind } = machine;
  return {
    $schema: schema,
    project: {
      ...{ id: project.id, name, summary, machine: { maker, model, year, kind } },
      ...{ builder, currency: project.currency, status, finished },
    },
    day: project.lastDay,
    tables: Object.fromEntries(tables.map((table) => [table.name, recordsOf(table)])),
    figures: figuresJson(project.now),
    specs: project.now.specs.map(specJson),
  };
}

/** Rows as objects; an empty cell is left out. */
function recordsOf({ columns, rows }: Table): readonly object[] {
  return rows.map((cells) =>
    Object.fromEntries(
      cells.flatMap((cell, index) => {
        const column = columns[index];
        return cell === undefined || column === undefined ? [] : [[column.name, cell]];
      }),
    ),
  );
}

function figuresJson(view: View): object {
  const { currency } = view.project;
  const money = (breakdown: Breakdown<Money>) =>
    breakdownJson(breakdown, currency, ({ minor }) => minor);
  const hours = (breakdown: Breakdown<Minutes>) =>
    breakdownJson(breakdown, 'min', (minutes) => minutes);
  return {
    costsByCategory: money(view.costsByCategory),
    costsByPhase: money(view.costsByPhase),
    costsBySource: money(view.costsBySource),
    hoursByPhase: hours(view.hoursByPhase),
    hoursByWork: hours(view.hoursByWork),
  };
}

function breakdownJson<Value>(
  { groups, total }: Breakdown<Value>,
  unit: string,
  numberOf: (value: Value) => number,
): object {
  const figure = ({ value, how, rows }: typeof total) => ({
    ...{ value: numberOf(value), how: say(how, words) },
    rows: rows.map(({ id }) => id),
  });
  return {
    unit,
    total: figure(total),
    groups: groups.map((group) => ({
      key: group.key,
      name: say(group.name, words),
      ...figure(group.figure),
    })),
  };
}

function specJson({
  spec,
  history,
  limits,
  verdict,
  target,
  reached,
  change,
}: SpecFigures): object {
  return {
    ...{ id: spec.id, name: spec.name, unit: spec.unit, ucum: ucumOf(spec.unit) },
    limits: limits && { lower: limits.lower, upper: limits.upper },
    ...{ verdict, target, reached },
    change: change && {
      ...{ before: change.before.id, after: change.after.id },
      ...{ difference: change.value, U: change.U, changed: change.changed },
    },
    values: history.map(valueJson),
  };
}

function valueJson(value: SpecValue): object {
  const { id, date, state, u, nu, U } = value;
  return {
    ...{ id, date, state, measured: value.kind === 'read', value: value.value },
    ...{ u, degreesOfFreedom: Number.isFinite(nu) ? nu : undefined, U },
    interval: intervalOf(value),
    from: value.kind === 'read' ? undefined : value.sources.flatMap(sourceJson),
  };
}

function sourceJson(source: SpecValue | undefined): readonly object[] {
  if (source === undefined) return [];
  const spec = source.kind === 'read' ? source.reading.spec : source.recipe.spec.id;
  return [{ spec, id: source.id }];
}
