import { type Day, parseDay } from '../time/day.ts';

/** Month names by language, as banks write them. */
const MONTHS: ReadonlyMap<string, number> = new Map(
  ['en', 'de', 'fr', 'nl', 'es', 'it'].flatMap((language) =>
    (['short', 'long'] as const).flatMap((month) => {
      const format = new Intl.DateTimeFormat(language, { month, timeZone: 'UTC' });
      return Array.from({ length: 12 }, (_, index) => {
        const name = format.format(new Date(Date.UTC(2024, index, 15)));
        return [plainName(name), index + 1] as const;
      });
    }),
  ),
);

const PARTS: Readonly<Record<string, string>> = {
  YYYY: '(?<year>\\d{4})',
  YY: '(?<short>\\d{2})',
  MMM: '(?<name>\\p{L}+)\\.?',
  MM: '(?<month>\\d{1,2})',
  M: '(?<month>\\d{1,2})',
  DD: '(?<day>\\d{1,2})',
  D: '(?<day>\\d{1,2})',
};

/** A time of day after the date, which a row has no place for. */
const TIME = '(?:[T ,]+\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?)?';

/** Reads days of one style; undefined for a style that lacks year, month or day, or has one of them twice. */
export function dayReader(style: string): ((text: string) => Day | undefined) | undefined {
  const tokens = style.match(/Y+|M+|D+|[^YMD]+/g) ?? [];
  const kinds = tokens.flatMap((token) => (/^[YMD]/.test(token) ? [token[0]] : []));
  if ([...kinds].sort().join('') !== 'DMY') return undefined;
  if (tokens.some((token) => /^[YMD]/.test(token) && PARTS[token] === undefined)) return undefined;
  // Without anything between them, digits can only be told apart when each part has its full width.
  const packed = tokens.length === 3;
  const source = tokens.map((token) => PARTS[token] ?? escaped(token)).join('');
  const pattern = packed ? source.replaceAll('{1,2}', '{2}') : source;
  const expression = new RegExp(`^${pattern}${TIME}$`, 'u');
  return (text) => dayOf(expression.exec(text.trim())?.groups);
}

function dayOf(found: Readonly<Record<string, string | undefined>> | undefined): Day | undefined {
  if (found === undefined) return undefined;
  const month = found.name === undefined ? found.month : MONTHS.get(plainName(found.name));
  const year = found.year ?? `20${found.short}`;
  if (month === undefined) return undefined;
  return parseDay(`${year}-${padded(month)}-${padded(found.day ?? '')}`);
}

function padded(part: string | number): string {
  return String(part).padStart(2, '0');
}

function escaped(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}

/** `Mär.` and `mär` are one; `août` and `aout` are one. */
function plainName(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}|\./gu, '')
    .toLowerCase();
}
