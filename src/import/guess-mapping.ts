import { stringify } from 'yaml';
import { decimalStyles } from '../model/imports.ts';
import { type Encoding, textReader } from './charset.ts';
import { dayReader } from './read-date.ts';
import { readNumber } from './read-money.ts';
import { splitLines } from './split-lines.ts';
import { guessSeparator } from './table.ts';

/** Words in headers, in the languages of many banks, by what the column holds; the first header that has one is taken. */
const HEADERS: readonly (readonly [field: string, words: RegExp])[] = [
  ['key', /reference id|transaction id|\bid\b|kundenreferenz|buchungs-?nr/i],
  ['date', /^date|booking|buchungs?tag|buchungsdatum|^datum|fecha|^data\b|date/i],
  ['debit', /debit|paid out|money out|soll|ausgang|lastschrift/i],
  ['credit', /credit|paid in|money in|haben|eingang|gutschrift/i],
  ['amount', /amount|betrag|umsatz|montant|importe|importo|bedrag|value/i],
  ['currency', /currency|währung|waehrung|devise|divisa|valuta/i],
  [
    'what',
    /description|details|\btext\b|purpose|memo|verwendungszweck|buchungstext|narrative|reference|libell|concepto|omschrijving/i,
  ],
  ['supplier', /payee|merchant|counterparty|empf|beg.nstigte|auftraggeber|name|beneficiary/i],
];

const DATES = [
  'YYYY-MM-DD',
  'DD.MM.YYYY',
  'DD/MM/YYYY',
  'MM/DD/YYYY',
  'DD-MM-YYYY',
  'DD.MM.YY',
  'DD/MM/YY',
  'D MMM YYYY',
  'YYYYMMDD',
];

/** A mapping filled in as far as a file's headers and first lines say, to be looked over and pasted into `imports.yaml`. */
export function guessMapping(
  bytes: Uint8Array,
  id: string,
  encoding: Encoding,
  phase: string,
  file: string,
): string {
  const decode = textReader(encoding);
  const separator = guessSeparator(bytes);
  const lines = splitLines(bytes, separator).flatMap(({ line, cells }) =>
    cells
      ? [
          {
            line,
            cells: cells.map((cell) =>
              decode(cell)
                .replace(/^\ufeff/, '')
                .trim(),
            ),
          },
        ]
      : [],
  );
  const scored = lines
    .slice(0, 30)
    .map(({ line, cells }) => ({ line, cells, found: columnsIn(cells) }));
  const header = scored.reduce(
    (best, one) => (Object.keys(one.found).length > Object.keys(best.found).length ? one : best),
    scored[0] ?? { line: 1, cells: [], found: {} },
  );
  const columns = { ...header.found };
  if (columns.debit && columns.credit) delete columns.amount;
  const below = lines.filter(({ line }) => line > header.line);
  const what = columns.what ?? wordiest(header.cells, below, Object.values(columns));
  if (what) columns.what = what;
  const samples = (field: string) =>
    below.flatMap(({ cells }) => {
      const text = cells[header.cells.indexOf(columns[field] ?? '')];
      return text ? [text] : [];
    });
  const amounts = ['amount', 'debit', 'credit'].flatMap(samples);
  const mapping = {
    id,
    files: file.replace(/\d+/g, '*'),
    kind: 'costs',
    ...(encoding === 'utf-8' ? {} : { encoding }),
    separator: separator === 9 ? 'tab' : String.fromCharCode(separator),
    columns,
    dates: best(DATES, samples('date'), (style, text) => dayReader(style)?.(text) !== undefined),
    decimals: best(decimalStyles, amounts, (style, text) => readNumber(text, style) !== undefined),
    fixed: { withhold: 'what', category: 'other', phase },
    rules: [
      { has: 'GROCER', skip: 'groceries' },
      { money: 'in', skip: 'no money of this machine' },
    ],
  };
  return stringify([mapping], { lineWidth: 0 });
}

function columnsIn(cells: readonly string[]): Record<string, string> {
  const free = new Set(cells.filter((cell) => cell !== '' && cell.length < 60));
  const found: Record<string, string> = {};
  for (const [field, words] of HEADERS) {
    const header = [...free].find((cell) => words.test(cell));
    if (header === undefined) continue;
    found[field] = header;
    free.delete(header);
  }
  return found;
}

/** The style that most texts fit; the earlier one of two that fit as many. */
function best<Style extends string>(
  styles: readonly Style[],
  texts: readonly string[],
  fits: (style: Style, text: string) => boolean,
): Style {
  const counted = styles.map((style) => ({
    style,
    count: texts.filter((text) => fits(style, text)).length,
  }));
  return counted.reduce((a, b) => (b.count > a.count ? b : a)).style;
}

/** The column with the most letters of those that hold nothing else: what a line is about, under whatever name. */
function wordiest(
  headers: readonly string[],
  lines: readonly { readonly cells: readonly string[] }[],
  taken: readonly string[],
): string | undefined {
  const letters = (index: number) =>
    lines.reduce((sum, { cells }) => sum + (cells[index]?.match(/\p{L}/gu)?.length ?? 0), 0);
  const free = headers.flatMap((name, index) =>
    name === '' || taken.includes(name) ? [] : [{ name, letters: letters(index) }],
  );
  return free.filter((column) => column.letters > 0).sort((a, b) => b.letters - a.letters)[0]?.name;
}
