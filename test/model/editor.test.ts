import { readdir, readFile } from 'node:fs/promises';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { editorSchemas } from '../../src/model/editor.ts';
import { demoFiles } from './demo-records.ts';

const files = await demoFiles();

/** One validator for each kind, by another implementation of JSON Schema 2020-12. */
const accepts = new Map<string, ValidateFunction>(
  [...editorSchemas()].map(([name, schema]) => {
    const ajv = new Ajv2020({ strict: false, allErrors: true });
    addFormats.default(ajv);
    return [name.replace('.json', ''), ajv.compile(schema)];
  }),
);

/** What is wrong with a file’s content, as the validator says it. */
function wrongWith(kind: string, content: unknown): string[] {
  const validate = accepts.get(kind);
  if (validate === undefined) return [`no schema for ${kind}`];
  validate(content);
  return (validate.errors ?? []).map(
    ({ instancePath, message, params }) => `${instancePath} ${message} ${JSON.stringify(params)}`,
  );
}

/** A sound record of a kind, taken from the demo, in a list where its file is a list. */
function recordOf(kind: string): {
  record: Record<string, unknown>;
  file: (record: object) => unknown;
} {
  const content = files.find((file) => file.kind === kind)?.content;
  const isList = Array.isArray(content);
  const record = (isList ? content[0] : content) as Record<string, unknown>;
  return { record, file: (changed) => (isList ? [changed] : changed) };
}

const required = {
  site: ['title', 'address', 'language', 'builder'],
  project: ['name', 'summary', 'machine', 'timeZone', 'work', 'people'],
  entry: ['title', 'date', 'phase', 'summary'],
  sources: ['id', 'kind', 'name'],
  phases: ['id', 'name', 'summary', 'planned-start', 'planned-finish', 'planned-hours'],
  specs: ['id', 'name', 'about', 'quantity', 'unit', 'system'],
  instruments: ['id', 'name', 'quantity'],
  photos: ['id', 'file'],
  hours: ['id', 'date', 'hours', 'phase', 'work', 'what'],
  costs: ['id', 'date', 'amount', 'category', 'what'],
  orders: ['id', 'date', 'amount', 'category', 'phase', 'what'],
  budgets: ['id', 'date', 'amount'],
  parts: ['id', 'name', 'system', 'source'],
  readings: ['id', 'spec', 'date', 'state', 'values', 'unit', 'instrument'],
  rates: ['id', 'date', 'from', 'to', 'rate', 'source'],
  searches: ['id', 'date', 'part', 'result'],
  withdrawals: ['id', 'date', 'row', 'because'],
  surveys: ['id', 'name', 'date'],
  grades: ['id', 'name', 'definition'],
  groups: ['id', 'name', 'parts', 'because'],
  findings: ['id', 'date', 'survey', 'part', 'found'],
  candidates: ['id', 'date', 'part', 'source', 'availability', 'risk'],
  choices: ['id', 'date', 'candidates', 'because'],
  preparations: ['id', 'date', 'parts', 'kind', 'what'],
  waits: ['id', 'date', 'phase', 'for', 'what'],
};

describe('the schemas for editors', () => {
  it('are there for every kind of record', () => {
    expect([...editorSchemas().keys()].sort()).toEqual(
      [...Object.keys(required), 'imports'].map((kind) => `${kind}.json`).sort(),
    );
  });

  it('accept every file of the demo', () => {
    expect(files.length).toBeGreaterThan(50);
    const refused = files.flatMap(({ path, kind, content }) =>
      wrongWith(kind, content).map((wrong) => `${path}${wrong}`),
    );
    expect(refused).toEqual([]);
  });

  it('are the files in content/.schema', async () => {
    const written = new Map<string, unknown>();
    for (const name of await readdir('content/.schema'))
      written.set(name, JSON.parse(await readFile(`content/.schema/${name}`, 'utf8')));
    expect(Object.fromEntries(written)).toEqual(Object.fromEntries(editorSchemas()));
  });

  it('say nothing of how the site is made: which fields are private, what an id points to', () => {
    const text = JSON.stringify([...editorSchemas()]);
    expect(text).not.toMatch(/"(ref|private|editor|item)":/);
  });
});

describe.each(Object.entries(required))('the schema of %s', (kind, fields) => {
  it('refuses a field that is not known', () => {
    const { record, file } = recordOf(kind);
    expect(wrongWith(kind, file(record))).toEqual([]);
    expect(wrongWith(kind, file({ ...record, colour: 'red' }))).toEqual([
      expect.stringContaining(
        'must NOT have additional properties {"additionalProperty":"colour"}',
      ),
    ]);
  });

  it.each(fields)('refuses a record without "%s"', (field) => {
    const { record, file } = recordOf(kind);
    const { [field]: _, ...rest } = record;
    expect(wrongWith(kind, file(rest))).toEqual([
      expect.stringContaining(`{"missingProperty":"${field}"}`),
    ]);
  });

  it('needs no field but those', () => {
    const { record, file } = recordOf(kind);
    const least = Object.fromEntries(fields.map((field) => [field, record[field]]));
    expect(wrongWith(kind, file(least))).toEqual([]);
  });
});

describe('the schema of imports, of which the demo has none,', () => {
  const mapping = {
    id: 'valley-bank',
    kind: 'costs',
    columns: { date: 'Day', what: ['Payee', 'Text'] },
    'skip-lines': 6,
    fixed: { phase: 'floor' },
    rules: [{ has: 'STEEL', set: { category: 'material' } }],
  };

  it('accepts a mapping, and refuses one without an id, with an unknown field or another kind', () => {
    expect(wrongWith('imports', [mapping])).toEqual([]);
    const { id: _, ...nameless } = mapping;
    for (const wrong of [nameless, { ...mapping, colour: 'red' }, { ...mapping, kind: 'coasts' }])
      expect(wrongWith('imports', [wrong])).toHaveLength(1);
  });
});

describe('a schema refuses a value that an editor can know to be wrong:', () => {
  it.each([
    ['costs', 'category', 'gift'],
    ['costs', 'date', '8 March 2025'],
    ['readings', 'state', 'asfound'],
    ['rates', 'from', 'GPB'],
    ['phases', 'id', 'Rear Axle'],
    ['specs', 'quantity', 'weight'],
    ['parts', 'quantity', 1.5],
    ['site', 'address', 'not an address'],
    ['entry', 'tells', { id: 'h-001' }],
  ])('in %s the %s %j', (kind, field, value) => {
    const { record, file } = recordOf(kind);
    expect(wrongWith(kind, file({ ...record, [field]: value }))).not.toEqual([]);
  });
});
