import { z } from 'zod';
import { id, oneOf, text, wholeNumber } from './fields.ts';
import { currency } from './money-fields.ts';

/** Kinds of rows that an import adds. */
export const importedKinds = [
  'costs',
  'hours',
  'orders',
  'parts',
  'searches',
  'readings',
  'rates',
] as const;

/** How the program that wrote a file writes its numbers. */
export const decimalStyles = ['1234.56', '1,234.56', '1.234,56', '1 234,56', "1'234.56"] as const;

/** Encodings that keep the characters of ASCII as they are, so that a line can be cut before it is read. */
export const encodings = [
  'utf-8',
  'windows-1250',
  'windows-1251',
  'windows-1252',
  'iso-8859-2',
  'iso-8859-15',
  'macintosh',
] as const;

/** What separates two cells. */
export const separators = [',', ';', 'tab', '|'] as const;

/** One text, or a list of texts. */
const texts = (description: string) =>
  z
    .union([z.string().transform((one) => [one]), z.array(z.string()).min(1)])
    .meta({ description, item: z.string() });

/** Texts by the names of fields. */
const byField = (description: string) => z.record(z.string(), z.string()).meta({ description });

const ruleSchema = z.strictObject({
  has: texts('words that stand in the line, capitals or not; one of them is enough').optional(),
  column: text({ description: 'the only column that is looked at for them' }).optional(),
  money: oneOf(['in', 'out']).optional(),
  skip: text({ description: 'why such lines are not imported' }).optional(),
  set: byField('what rows of such lines say, by field').optional(),
});

/** How files of one sort are read into rows: `imports.yaml`. It stays at home. */
export const importSchema = z.strictObject({
  id: id().meta({ description: 'name of the account or calendar; lines are recognised under it' }),
  files: text({
    description: 'names of its files, with * for any characters, like statement-*.csv',
  }).optional(),
  kind: oneOf(importedKinds),
  encoding: oneOf(encodings).default('utf-8'),
  separator: oneOf(separators).optional(),
  'skip-lines': wholeNumber()
    .meta({ description: 'lines above the header; without it the header is looked for' })
    .optional(),
  columns: z
    .record(z.string(), texts('header of the column, or of several that are joined'))
    .default({})
    .meta({ description: 'columns by the fields that they fill; also key, debit, credit, sign' }),
  dates: text({ description: 'how days are written, like DD.MM.YYYY' }).default('YYYY-MM-DD'),
  decimals: oneOf(decimalStyles).default('1234.56'),
  'money-out': oneOf(['negative', 'positive'])
    .default('negative')
    .meta({ description: 'how money that was spent stands in the column of amounts' }),
  currency: currency().optional(),
  fixed: byField('what every row says, by field').optional(),
  rules: z.array(ruleSchema).default([]),
});

/** Columns that fill no field of their own. */
export const helpColumns = ['key', 'debit', 'credit', 'sign', 'currency'] as const;

export type ImportRule = z.output<typeof ruleSchema>;
