import type { z } from 'zod';
import { factsOf } from '../model/facts.ts';
import { type ImportMapping, listKinds } from '../model/kinds.ts';
import { dayReader } from './read-date.ts';
import { type DecimalStyle, type FoundNumber, readNumber } from './read-money.ts';

/** Fields that a line fills by its columns, which way money went, and what in it could not be read. */
export interface LineFields {
  readonly fields: Readonly<Record<string, string>>;
  readonly money?: 'in' | 'out' | undefined;
  /** What identifies the line. */
  readonly identity: readonly string[];
  readonly wrong: readonly string[];
}

type Cells = Readonly<Record<string, string>>;

/** Reads the cells of one line by a mapping's columns and styles. */
export function fieldsOfLine(cells: Cells, mapping: ImportMapping): LineFields {
  const wrong: string[] = [];
  const fields: Record<string, string> = {};
  const at = (field: string) => joined(cells, mapping.columns[field]);
  const shape: Readonly<Record<string, unknown>> = listKinds[mapping.kind].shape;
  const money = moneyOf(at, mapping, wrong);
  if (money) fields.amount = money.text;

  for (const field of Object.keys(mapping.columns)) {
    const schema = shape[field] as z.ZodType | undefined;
    const text = at(field);
    if (schema === undefined || text === '' || (field === 'amount' && mapping.kind === 'costs'))
      continue;
    const read = readField(text, factsOf(schema).reads, mapping);
    if (read === undefined)
      wrong.push(
        `"${text}" in ${columnNames(mapping, field)} is not written like ${styleOf(factsOf(schema).reads, mapping)}`,
      );
    else fields[field] = read;
  }
  const own = at('key');
  const content = [
    fields.date ?? '',
    money?.signed ?? fields.hours ?? '',
    at('what'),
    at('supplier'),
  ];
  const identity = own === '' ? ['line', ...content] : ['key', own];
  return { fields, money: money?.way, identity, wrong };
}

function readField(
  text: string,
  reads: string | undefined,
  { dates, decimals, currency }: ImportMapping,
): string | undefined {
  if (reads === 'date') return dayReader(dates)?.(text);
  if (reads === 'hours')
    return /:/.test(text) ? text : readNumber(text, decimals as DecimalStyle)?.decimal;
  if (reads === 'number') return readNumber(text, decimals as DecimalStyle)?.decimal;
  if (reads !== 'amount') return text.replace(/\s+/g, ' ');
  const found = readNumber(text, decimals as DecimalStyle);
  if (found === undefined || found.negative) return undefined;
  return withCurrency(found.decimal, found.currency ?? currency);
}

function styleOf(reads: string | undefined, { dates, decimals }: ImportMapping): string {
  return reads === 'date' ? dates : decimals;
}

interface FoundMoney {
  readonly text: string;
  readonly signed: string;
  readonly way: 'in' | 'out';
}

/** Money of a cost line: one column with signs, or one for each way. */
function moneyOf(
  at: (field: string) => string,
  mapping: ImportMapping,
  wrong: string[],
): FoundMoney | undefined {
  const { columns, kind, decimals, moneyOut, currency } = mapping;
  if (kind !== 'costs') return undefined;
  const read = (field: string) => {
    const text = [at(field), field === 'amount' ? at('sign') : ''].join(' ').trim();
    if (text === '') return undefined;
    const found = readNumber(text, decimals as DecimalStyle);
    if (found === undefined)
      wrong.push(`"${text}" in ${columnNames(mapping, field)} is no amount like ${decimals}`);
    return found;
  };
  const isThere = (found: FoundNumber | undefined) => found !== undefined && !isZero(found);
  const [amount, debit, credit] = [read('amount'), read('debit'), read('credit')];
  const all = [amount, debit, credit].filter(isThere);
  const found = all[0];
  if (wrong.length > 0) return undefined;
  if (found === undefined || all.length > 1) {
    const names = ['amount', 'debit', 'credit'].filter((name) => columns[name]);
    const where = names.map((name) => columnNames(mapping, name)).join(' and ');
    wrong.push(found ? `both of ${where} hold an amount` : `there is no amount in ${where}`);
    return undefined;
  }
  const said = [found.currency, at('currency') || undefined, currency].filter((code) => code);
  if (new Set(said).size > 1) {
    wrong.push(`the line says ${said.join(' and ')}`);
    return undefined;
  }
  const way = wayOf(found, { found, amount, debit }, moneyOut);
  const text = withCurrency(found.decimal, said[0]);
  return { text, signed: `${way === 'out' ? '-' : ''}${text}`, way };
}

/** Banks write what they took as a negative number in its own column, or as a plain one; either way it left. */
function wayOf(
  found: FoundNumber,
  { amount, debit }: Readonly<Record<string, FoundNumber | undefined>>,
  moneyOut: string,
): 'in' | 'out' {
  if (found === debit) return 'out';
  if (found !== amount) return 'in';
  return found.negative === (moneyOut === 'negative') ? 'out' : 'in';
}

function isZero({ decimal }: FoundNumber): boolean {
  return /^[0.]*$/.test(decimal);
}

function withCurrency(decimal: string, currency: string | undefined): string {
  return currency ? `${decimal} ${currency}` : decimal;
}

function joined(cells: Cells, names: readonly string[] | undefined): string {
  const texts = (names ?? []).map((name) => cells[name] ?? '').filter((text) => text !== '');
  return texts.join(', ');
}

function columnNames({ columns }: ImportMapping, field: string): string {
  return (columns[field] ?? [field]).map((name) => `"${name}"`).join(', ');
}
