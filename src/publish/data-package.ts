import { hash } from 'node:crypto';
import type { Column, Table } from './data/table.ts';

/** A table as a file, ready to be put beside the descriptor. */
export interface TableFile {
  readonly table: Table;
  readonly path: string;
  readonly text: string;
}

/** What the package as a whole is called. */
export interface PackageInfo {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** Absolute address of the descriptor, which is also its id. */
  readonly address: string;
  readonly homepage: string;
  /** The day of the newest row. */
  readonly version: string;
  readonly contributor: string;
}

/** Descriptor of the tables by Data Package 2.0 (datapackage.org/standard), each with a Table Schema, its size and its SHA-256. */
export function dataPackage(info: PackageInfo, files: readonly TableFile[]): object {
  const { address, contributor, ...named } = info;
  return {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    id: address,
    ...named,
    contributors: [{ title: contributor, roles: ['creator'] }],
    resources: files.map(resource),
  };
}

function resource({ table, path, text }: TableFile): object {
  const bytes = Buffer.from(text, 'utf8');
  return {
    name: table.name,
    type: 'table',
    description: table.about,
    path,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes: bytes.length,
    hash: `sha256:${hash('sha256', bytes)}`,
    schema: tableSchema(table),
  };
}

function tableSchema({ name, columns, primaryKey }: Table): object {
  const foreignKeys = columns.flatMap((column) => foreignKey(name, column));
  return {
    fields: columns.map(field),
    primaryKey,
    ...(foreignKeys.length > 0 ? { foreignKeys } : {}),
    missingValues: [''],
  };
}

/** A key that names no resource refers to its own table. */
function foreignKey(table: string, { name, ref }: Column): readonly object[] {
  if (ref === undefined) return [];
  const reference = { ...(ref === table ? {} : { resource: ref }), fields: ['id'] };
  return [{ fields: [name], reference }];
}

function field(column: Column): object {
  const { name, type, description, format, unit, required, minimum, pattern } = column;
  const constraints = { required: required || undefined, minimum, enum: column.enum, pattern };
  return {
    name,
    type,
    ...(format ? { format } : {}),
    description,
    // Table Schema has no units; further properties are allowed. Codes are UCUM's, of money ISO 4217's.
    ...(unit ? { unit } : {}),
    constraints,
  };
}
