import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse as parseCsv } from 'csv-parse/sync';
import { Decimal } from 'decimal.js';
import { parse as parseYaml } from 'yaml';

// A second way to the figures of the demo: its files read with csv-parse and yaml, decimal.js for sums. Nothing of src/ is used.

export const contentDir = fileURLToPath(new URL('../../content/', import.meta.url));

/** A row with all its values as written. */
export type Row = Readonly<Record<string, string | readonly string[]>>;

/** All rows of a kind, in the order of files and lines. */
export function rowsOf(project: string, kind: string): Row[] {
  return ['', 'ledger/'].flatMap((folder) => {
    const dir = `${contentDir}${project}/${folder}`;
    const files = readdirSync(dir).filter((name) => new RegExp(`^${kind}[-.]`).test(name));
    return files.sort().flatMap((name) => parseRows(readFileSync(dir + name, 'utf8'), name));
  });
}

function parseRows(text: string, name: string): Row[] {
  if (name.endsWith('.csv')) return parseCsv(text, { columns: true }) as Row[];
  // Failsafe keeps every scalar the text it is.
  return parseYaml(text, { schema: 'failsafe' }) as Row[];
}

/** The text of a cell, empty where there is none. */
export function cell(row: Row, name: string): string {
  const value = row[name] ?? '';
  return typeof value === 'string' ? value : value.join(' ');
}

/** Values in a cell or a list. */
export function listIn(row: Row, name: string): string[] {
  return cell(row, name).split(/\s+/).filter(Boolean);
}

/** `2:30` as 150. */
export function minutesOf(row: Row): number {
  const [hours = '', minutes = ''] = cell(row, 'hours').split(':');
  return Number(hours) * 60 + Number(minutes);
}

/** Rows that count at the end of a day: dated by then, written down by then if they correct another, and not replaced by then. */
export function countingRows(project: string, kind: string, day: string): Row[] {
  const rows = rowsOf(project, kind);
  const said = (row: Row) => cell(row, 'recorded') || cell(row, 'date');
  const replaced = new Map([
    ...rows.map((row) => [cell(row, 'corrects'), said(row)] as const),
    ...rowsOf(project, 'withdrawals').map((row) => [cell(row, 'row'), cell(row, 'date')] as const),
  ]);
  return rows.filter((row) => {
    const begun = cell(row, 'corrects') === '' ? cell(row, 'date') : said(row);
    const until = replaced.get(cell(row, 'id'));
    return cell(row, 'date') <= day && begun <= day && (until === undefined || until > day);
  });
}

/** Whether the amount of a cost row is told in the total of its category only. */
export function isWithheld(row: Row): boolean {
  return listIn(row, 'withhold').includes('amount');
}

/** A cost row once for each phase that bears it, with what each bears; the demo's portions come out even. */
export function byPhase(row: Row, cents: Decimal): { phase: string; cents: Decimal }[] {
  if (isWithheld(row)) return [{ phase: 'none', cents }];
  const portions = listIn(row, 'split-phases').map((portion) => portion.split('='));
  if (portions.length === 0) return [{ phase: cell(row, 'phase'), cents }];
  return portions.map(([phase = '', amount = '']) => ({
    phase,
    cents: new Decimal(amount).times(100),
  }));
}

/** Cents or pence that a cost row counts for in the project's currency, credits negative. */
export function centsOf(row: Row, currency: string, rates: readonly Row[]): Decimal {
  const [digits = '', paidIn = currency] = cell(row, 'amount').split(' ');
  const rate = paidIn === currency ? '1' : newestRate(rates, [paidIn, currency], cell(row, 'date'));
  const sign = ['', 'payment', 'gift', 'trade'].includes(cell(row, 'kind')) ? 1 : -1;
  // ROUND_HALF_UP goes by size: a half away from zero.
  const onTop = cell(row, 'tax') === 'outside' ? cell(row, 'tax-rate').replace(' %', '') : '0';
  const paid = new Decimal(digits)
    .times(new Decimal(onTop).plus(100))
    .toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
  return paid.times(rate).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(sign);
}

function newestRate(rates: readonly Row[], pair: readonly string[], day: string): string {
  const usable = rates
    .filter((row) => [cell(row, 'from'), cell(row, 'to')].join() === pair.join())
    .filter((row) => cell(row, 'date') <= day)
    .sort((a, b) => cell(a, 'date').localeCompare(cell(b, 'date')));
  const newest = usable.at(-1);
  if (newest === undefined) throw new Error(`no rate ${pair.join(' to ')} on ${day}`);
  return cell(newest, 'rate');
}

/** The furthest step that a part has gone. */
export function stateOf(row: Row): string {
  const steps = ['sold', 'scrapped', 'fitted', 'got', 'ordered', 'wanted'];
  return steps.find((step) => cell(row, step) !== '') ?? 'noted';
}

/** Sums by a key, and counts where each row is worth 1; keys in order of the alphabet. */
export function sumBy<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
  sizeOf: (item: Item) => number | Decimal = () => 1,
): Record<string, number> {
  const sums = new Map<string, Decimal>();
  for (const item of items)
    sums.set(keyOf(item), (sums.get(keyOf(item)) ?? new Decimal(0)).plus(sizeOf(item)));
  const sorted = [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(sorted.map(([key, sum]) => [key, sum.toNumber()]));
}
