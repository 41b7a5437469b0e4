import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import addFormats from 'ajv-formats';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { demoData } from './demo-data.ts';

const demo = await demoData();
const missing = inject('missing').dataPackageProfile;

interface Resource {
  name: string;
  path: string;
  bytes: number;
  hash: string;
  schema: {
    fields: { name: string; type: string; description: string }[];
    primaryKey: string[];
    foreignKeys?: { fields: string[]; reference: { resource?: string; fields: string[] } }[];
  };
}
interface Package {
  $schema: string;
  resources: Resource[];
}
const read = (text: string | undefined) => JSON.parse(text ?? '') as Package;

// The profile itself: datapackage.org/profiles/2.0/datapackage.json (public domain).
describe.skipIf(missing)('the descriptor, by the official profile of Data Package 2.0', () => {
  let fits: ValidateFunction;
  beforeAll(() => {
    const file = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'datapackage-2.0/datapackage.json');
    // The profile uses a format of its own, for forms.
    const ajv = new Ajv({ strict: false, logger: false });
    addFormats.default(ajv);
    fits = ajv.compile(JSON.parse(readFileSync(file, 'utf8')));
  });

  test.each(demo)('fits for $id', ({ files }) => {
    const fitting = fits(read(files['datapackage.json']));
    expect([fitting, fits.errors]).toEqual([true, null]);
  });

  const changes: readonly (readonly [string, (descriptor: Package) => void])[] = [
    ['no resources', (descriptor) => descriptor.resources.splice(0)],
    ['a type that there is not', ({ resources }) => setFirst(resources, { type: 'money' })],
    [
      'a hash that is none',
      ({ resources }) => Object.assign(resources[0] ?? {}, { hash: 'sha256:x y' }),
    ],
    [
      'a path out of the folder',
      ({ resources }) => Object.assign(resources[0] ?? {}, { path: '../costs.csv' }),
    ],
    [
      'a foreign key that is a word',
      ({ resources }) => Object.assign(resources[0]?.schema ?? {}, { foreignKeys: 'id' }),
    ],
  ];
  test.each(changes)('refuses %s', (_, change) => {
    const descriptor = read(demo[0]?.files['datapackage.json']);
    change(descriptor);
    expect(fits(descriptor)).toBe(false);
  });
});

function setFirst(resources: readonly Resource[], facts: object): void {
  Object.assign(resources[0]?.schema.fields[0] ?? {}, facts);
}

/** What the profile can't see: names that lead nowhere, and files that are not as described. */
function slips({ resources }: Package, files: Readonly<Record<string, string>>): string[] {
  const byName = new Map(resources.map((resource) => [resource.name, resource]));
  const twice = byName.size < resources.length ? ['two resources of one name'] : [];
  const own = resources.flatMap(({ name, path, bytes, hash, schema }) => {
    const file = Buffer.from(files[path] ?? '', 'utf8');
    const sha256 = createHash('sha256').update(file).digest('hex');
    const fields = schema.fields.map((field) => field.name);
    const keys = (schema.foreignKeys ?? []).map(({ fields: from, reference }) => {
      const target = byName.get(reference.resource ?? name)?.schema.primaryKey;
      return from.every((field) => fields.includes(field)) && `${target}` === `${reference.fields}`;
    });
    return [
      file.length === bytes ? '' : `${name}: bytes`,
      hash === `sha256:${sha256}` ? '' : `${name}: hash`,
      files[path]?.startsWith(`${fields.join(',')}\r\n`) ? '' : `${name}: header`,
      schema.primaryKey.every((field) => fields.includes(field)) ? '' : `${name}: primary key`,
      keys.every(Boolean) ? '' : `${name}: foreign key`,
      schema.fields.every(({ description }) => description.length > 2)
        ? ''
        : `${name}: silent field`,
    ];
  });
  return [...twice, ...own].filter(Boolean);
}

describe('the descriptor beside its files', () => {
  test.each(demo)('is right in bytes, hash, header and keys for $id', ({ files, made }) => {
    const descriptor = read(files['datapackage.json']);
    expect(descriptor.$schema).toBe('https://datapackage.org/profiles/2.0/datapackage.json');
    expect(descriptor.resources).toHaveLength(made.tables.length);
    expect(slips(descriptor, files)).toEqual([]);
  });

  test('is seen to be wrong when a file or a name is another', () => {
    const files = demo[0]?.files ?? {};
    const descriptor = () => read(files['datapackage.json']);
    const changed = { ...files, 'work.csv': (files['work.csv'] ?? '').replace('survey', 'Survey') };
    expect(slips(descriptor(), changed)).toEqual(['work: hash']);
    const renamed = descriptor();
    for (const resource of renamed.resources) if (resource.name === 'work') resource.name = 'works';
    expect(slips(renamed, files)).toEqual(['hours: foreign key']);
  });
});
