import type { z } from 'zod';
import { factsOf } from '../../model/facts.ts';
import { toDecimal, toMinor, type WrittenAmount } from '../../money/money.ts';
import type { Quantity } from '../../units/quantity.ts';
import { publicValue } from './public.ts';
import type { Cell, ColumnOf } from './table.ts';

/** What a cell needs to know besides its record. */
export interface CellContext {
  /** Of amounts that were written without one. */
  readonly currency: string;
  /** The id that a person is published under. */
  readonly personOf: (id: string) => string;
}

type Facts = ReturnType<typeof factsOf>;

/**
 * Columns for the fields of a schema, in its order, but for those left out. Private fields have none, and lists have tables of their
 * own. A field that a row may withhold is never required.
 */
export function columnsOf(
  schema: z.ZodObject,
  context: CellContext,
  leftOut: readonly string[] = [],
): ColumnOf<object>[] {
  const fields = Object.entries(schema.shape) as [string, z.ZodType][];
  const mayBeWithheld = withheldNames(schema);
  return fields.flatMap(([field, type]) => {
    const facts = factsOf(type);
    if (leftOut.includes(field) || facts.private) return [];
    const required = type.type !== 'optional' && !mayBeWithheld.includes(field);
    return fieldColumns({ field, facts, required }, context);
  });
}

/** `planned-start` as a database names it. */
export function columnName(field: string): string {
  return field.replaceAll('-', '_');
}

/** Fields that rows of a schema may withhold. */
function withheldNames({ shape }: z.ZodObject): readonly string[] {
  const item = shape.withhold && factsOf(shape.withhold as z.ZodType).item;
  return item ? wordsOf(factsOf(item)) : [];
}

function wordsOf({ editor }: Facts): readonly string[] {
  return (editor?.enum ?? []) as readonly string[];
}

interface Field {
  readonly field: string;
  readonly facts: Facts;
  readonly required: boolean;
}

function fieldColumns(
  { field, facts, required }: Field,
  context: CellContext,
): readonly ColumnOf<object>[] {
  const name = columnName(field);
  const { description } = facts;
  const shown =
    <Value>(show: (value: Value) => Cell) =>
    (record: object) => {
      const value = publicValue(record, field);
      // The schema of the field gives values of this type.
      return value === undefined ? undefined : show(value as Value);
    };
  const column = {
    ...{ name, required, cell: shown((value: Cell) => value) },
    ...(description === undefined ? {} : { description }),
  };

  if (facts.item) return [];
  if (facts.ref === 'people')
    return [{ ...column, type: 'string', ref: 'people', cell: shown(context.personOf) }];
  if (facts.ref) return [{ ...column, type: 'string', ref: facts.ref }];
  if (facts.reads === 'quantity')
    return [
      {
        ...column,
        type: 'number',
        cell: shown(({ value, decimals }: Quantity) => value.toFixed(decimals)),
      },
      { ...besides(column, 'unit'), cell: shown(({ unit }: Quantity) => unit) },
    ];
  if (facts.reads === 'amount')
    return [
      { ...column, type: 'number', minimum: 0, cell: shown(decimalIn(context.currency)) },
      {
        ...besides(column, 'currency'),
        cell: shown(({ currency }: WrittenAmount) => currency ?? context.currency),
      },
    ];
  return [{ ...column, type: 'string', ...shapeOf(facts, name) }];
}

/** Type and constraints of a field whose value is a cell as it is. */
function shapeOf(facts: Facts, name: string): Partial<ColumnOf<object>> {
  switch (facts.reads) {
    case 'id':
      return typeof facts.editor?.pattern === 'string' ? { pattern: facts.editor.pattern } : {};
    case 'word':
      return { enum: wordsOf(facts) };
    case 'currency':
      return { pattern: '^[A-Z]{3}$' };
    case 'address':
      return { format: 'uri' };
    case 'date':
      return { type: 'date' };
    case 'flag':
      return { type: 'boolean' };
    case 'integer':
      return { type: 'integer', minimum: 1 };
    case 'number':
      return { type: 'number', minimum: 0 };
    case 'percent':
      return { type: 'number', minimum: 0, unit: '%' };
    case 'hours':
      return { name: name.replace('hours', 'minutes'), type: 'integer', minimum: 0, unit: 'min' };
    default:
      return {};
  }
}

/** A second column for what a value of two parts is in. */
function besides(
  column: Omit<ColumnOf<object>, 'type'>,
  end: 'unit' | 'currency',
): Omit<ColumnOf<object>, 'cell'> {
  const { name, required } = column;
  return {
    name: `${name}_${end}`,
    type: 'string',
    required: required ?? false,
  };
}

/** All the decimals of the currency, as money is written. */
function decimalIn(ownCurrency: string): (amount: WrittenAmount) => string {
  return ({ decimal, currency = ownCurrency }) => {
    const money = toMinor(decimal, currency);
    return money ? toDecimal(money) : decimal;
  };
}
