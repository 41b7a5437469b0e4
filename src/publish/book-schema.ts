import type { Column, Table } from './data/table.ts';

/** JSON Schema (2020-12) of a project's whole book. The tables decide what their rows may hold. */
export function bookSchema(tables: readonly Table[], address: string): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: address,
    title: 'The whole book of a rebuild',
    description: `Decimal numbers of rows are text, so that no digit is lost; figures of money are whole minor units of the currency, figures of hours whole minutes. Uncertainty U is at 95 %.`,
    ...group({
      $schema: text,
      project,
      day,
      tables: group(Object.fromEntries(tables.map((table) => [table.name, rowsSchema(table)]))),
      figures: group(Object.fromEntries(FIGURES.map((name) => [name, breakdown]))),
      specs: listOf(spec),
    }),
  };
}

type Schema = Readonly<Record<string, unknown>>;

/** An object with these properties and no others; names that end in `?` may be missing. */
function group(properties: Readonly<Record<string, Schema>>): Schema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    properties: Object.fromEntries(
      Object.entries(properties).map(([name, schema]) => [name.replace('?', ''), schema]),
    ),
    required: names.filter((name) => !name.endsWith('?')),
    additionalProperties: false,
  };
}

const listOf = (items: Schema): Schema => ({ type: 'array', items });
const oneOf = (...words: readonly string[]): Schema => ({ type: 'string', enum: words });

const text: Schema = { type: 'string', minLength: 1 };
const number: Schema = { type: 'number' };
const size: Schema = { type: 'number', minimum: 0 };
const whole: Schema = { type: 'integer' };
const flag: Schema = { type: 'boolean' };
const day: Schema = { type: 'string', format: 'date' };
const decimal: Schema = { type: 'string', pattern: '^-?\\d+(\\.\\d+)?$' };

const project = group({
  id: text,
  name: text,
  summary: text,
  machine: group({ maker: text, model: text, year: whole, kind: text }),
  'builder?': text,
  currency: { type: 'string', pattern: '^[A-Z]{3}$' },
  status: oneOf('underway', 'finished'),
  'finished?': day,
});

const FIGURES = [
  'costsByCategory',
  'costsByPhase',
  'costsBySource',
  'hoursByPhase',
  'hoursByWork',
] as const;

const figure = { value: whole, how: text, rows: listOf(text) };

const breakdown = group({
  unit: { ...text, description: 'currency whose minor units are counted, or min' },
  total: group(figure),
  groups: listOf(group({ key: text, name: text, ...figure })),
});

const interval = group({ low: number, high: number });

const specValue = group({
  id: text,
  date: day,
  state: oneOf('as-found', 'before', 'after', 'final'),
  measured: flag,
  value: number,
  'u?': size,
  'degreesOfFreedom?': size,
  'U?': size,
  'interval?': interval,
  'from?': {
    ...listOf(group({ spec: text, id: text })),
    description: 'values it is worked out of',
  },
});

const spec = group({
  id: text,
  name: text,
  unit: text,
  'ucum?': text,
  'limits?': group({ 'lower?': number, 'upper?': number }),
  'verdict?': oneOf('meets', 'does not meet', 'undecided'),
  'target?': number,
  'reached?': oneOf('reached', 'not reached', 'undecided'),
  'change?': group({ before: text, after: text, difference: number, 'U?': size, 'changed?': flag }),
  values: listOf(specValue),
});

function rowsSchema({ about, columns }: Table): Schema {
  const properties = columns.map((column) => [
    column.required ? column.name : `${column.name}?`,
    columnSchema(column),
  ]);
  return { description: about, ...listOf(group(Object.fromEntries(properties))) };
}

function columnSchema(column: Column): Schema {
  const { minimum, pattern, unit } = column;
  const description = unit ? `${column.description} (${unit})` : column.description;
  const whole = { type: 'integer', ...(minimum === undefined ? {} : { minimum }) };
  const types = {
    string: {
      ...text,
      ...(column.enum ? { enum: column.enum } : {}),
      ...(pattern ? { pattern } : {}),
    },
    integer: whole,
    number: decimal,
    boolean: flag,
    date: day,
  };
  return { description, ...types[column.type] };
}
