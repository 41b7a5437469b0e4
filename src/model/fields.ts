import { z } from 'zod';
import { suggest } from '../read/nearest.ts';
import { oneSlipFrom } from '../read/one-slip.ts';
import { type Day, guessDay, parseDay } from '../time/day.ts';
import { type Minutes, parseDuration } from '../time/duration.ts';
import { parseMoment } from '../time/moment.ts';
import { kindNames, type QuantityKind } from '../units/kinds.ts';
import { decimalsOf, type Quantity, readNumber, readQuantity } from '../units/quantity.ts';
import { guessUnit, isUnit, soleUnit, unitSymbols } from '../units/unit.ts';
import { type FieldFacts, numberOrText, readBy } from './field.ts';

/** One or more words of lower-case letters and digits, joined by hyphens. */
export const id = () =>
  readBy<string>(
    'id',
    (text) => {
      if (text.length > LONGEST_ID) return { wrong: `is longer than ${LONGEST_ID} letters` };
      return ID.test(text) ? text : { wrong: 'is not an id', fix: idFix(text) };
    },
    { editor: { type: 'string', pattern: ID.source }, description: 'lower-case words joined by -' },
  );

/** It becomes part of an address and of the name of a file. */
const LONGEST_ID = 100;

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

function idFix(text: string): string | undefined {
  const slug = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return slug === '' ? 'use lower-case letters, digits and hyphens' : `write "${slug}"`;
}

/** The id of a record of another kind; that it exists is checked once everything is read. */
export const ref = (kind: string) =>
  id().meta({ ref: kind, editor: { type: 'string' }, description: `id of one of the ${kind}` });

/** A record that comes before, and how many days lie between; fewer than none is an overlap. */
export interface Link {
  readonly id: string;
  readonly days: number;
}

/** `strip`, `strip:+5` or `strip:-3`: an id of another kind, with days of lag. */
export const link = (kind: string) =>
  readBy<Link>(
    'link',
    (value) => {
      const [, before, days = '0'] =
        /^([a-z0-9]+(?:-[a-z0-9]+)*)(?::([+-]?\d{1,4}))?$/.exec(value) ?? [];
      return before === undefined
        ? { wrong: 'is not a link', fix: 'write an id, or an id and days like strip:+5' }
        : { id: before, days: Number(days) };
    },
    { ref: kind, editor: { type: 'string' } },
  );

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;
const CONTROL_REFUSED = { wrong: 'contains a control character', fix: 'type the text anew' };

/** Signs that begin a formula. Spreadsheets in Japanese and Chinese take the wide forms too. */
const RUN_AT_START = /^[=+\-@＝＋－＠\t\r]/;

/** A formula after a sign that parts cells where the decimal sign is a comma, whatever quotes stand around; ";-)" is none. */
const RUN_INSIDE = /[;\t\n] *([=@＝＠]|[+\-＋－](?=[^;\t\n]*(?:\w\(|\|)))/;

/** Text for readers. A start that a spreadsheet would run as a formula is refused, so that the published tables are safe to open. */
export const text = (facts: FieldFacts = {}) =>
  readBy<string>(
    'text',
    (value) => {
      if (value === '') return { wrong: 'is empty' };
      if (RUN_AT_START.test(value))
        return {
          wrong: `starts with "${value[0]}", which a spreadsheet would run as a formula`,
          fix: 'start with a word',
        };
      const inside = RUN_INSIDE.exec(value)?.[1];
      if (inside !== undefined)
        return {
          wrong: `has "${inside}" where some spreadsheets begin a cell, and would run it as a formula`,
          fix: 'put a word before it',
        };
      return CONTROL.test(value) ? CONTROL_REFUSED : value;
    },
    { editor: numberOrText, ...facts },
  );

/** A formula or a number with its unit: text that may start with a minus sign, since it stands in no published table. */
export const arithmetic = (facts: FieldFacts = {}) =>
  readBy<string>(
    'text',
    (value) =>
      value === '' ? { wrong: 'is empty' } : CONTROL.test(value) ? CONTROL_REFUSED : value,
    { editor: numberOrText, ...facts },
  );

/** Text that never leaves the builder's machine. */
export const privateText = () => text({ private: true, description: 'private: never published' });

/** What to say of a day that its month does not have. */
function monthEnds(text: string): string | undefined {
  const [, year, month] = /^(\d{4})-(0[1-9]|1[0-2])-\d{2}$/.exec(text) ?? [];
  if (year === undefined || month === undefined) return undefined;
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  return `that month has ${last} days`;
}

/** A calendar day. */
export const day = () =>
  readBy<Day>(
    'date',
    (value) => {
      const day = parseDay(value);
      if (day !== undefined && !/^(1[89]|2[01])/.test(day))
        return { wrong: 'lies outside of the years 1800 to 2199', fix: 'correct the year' };
      const guess = guessDay(value);
      return (
        day ?? {
          wrong: 'is not a date',
          fix: guess
            ? `write "${guess}"`
            : (monthEnds(value) ?? 'write year-month-day, like 2025-03-08'),
          mend: guess,
        }
      );
    },
    { editor: { type: 'string', format: 'date' } },
  );

/** Hours of work, in whole minutes. */
export const duration = () =>
  readBy<Minutes>(
    'hours',
    (value) =>
      parseDuration(value) ?? { wrong: 'is not a length of work', fix: durationFix(value) },
    { editor: numberOrText, description: 'hours and minutes, like 2:30' },
  );

function durationFix(value: string): string {
  const loose = /^(\d+)[.,h ]+ ?([0-5]\d) ?(?:m|min)?$/.exec(value);
  if (loose) return `write "${loose[1]}:${loose[2]}"`;
  const point = value.replace(/^(\d+),(\d+)$/, '$1.$2');
  return point !== value && parseDuration(point) !== undefined
    ? `write "${point}"`
    : 'write hours and minutes, like 2:30';
}

/** A number with its unit. */
export const quantity = () =>
  readBy<Quantity>('quantity', readQuantity, {
    editor: { type: 'string' },
    description: 'a number and its unit, like 640 kg',
  });

/** The symbol of a unit. */
export const unit = () =>
  readBy<string>(
    'unit',
    (value) => {
      if (isUnit(value)) return value;
      const guess = guessUnit(value);
      return {
        wrong: 'is not a unit known here',
        fix: guess ? `write "${guess}"` : suggest(value, unitSymbols()),
        mend: soleUnit(value),
      };
    },
    { editor: { type: 'string' } },
  );

/** A quantity kind: what sort of thing a unit measures. */
export const quantityKind = () => oneOf(kindNames as readonly QuantityKind[]);

/** One of a fixed list of words. */
export const oneOf = <const W extends string>(words: readonly W[]) =>
  readBy<W>(
    'word',
    (value) =>
      words.find((word) => word === value) ?? {
        wrong: 'is not one of the words known here',
        fix: suggest(value, words) ?? `one of: ${words.join(', ')}`,
        mend: oneSlipFrom(value, words),
      },
    { editor: { enum: [...words] } },
  );

/** A decimal number without a unit, kept as written as well. */
export const decimal = () =>
  readBy<string>(
    'number',
    (value) =>
      /^\d{1,15}(\.\d{1,15})?$/.test(value)
        ? value
        : {
            wrong: 'is not a decimal number',
            fix: /^\d+,\d+$/.test(value)
              ? `write "${value.replace(',', '.')}"`
              : 'write digits, like 0.8612',
          },
    { editor: numberOrText },
  );

/** A whole number from 1 up. */
export const wholeNumber = () =>
  readBy<number>(
    'number',
    (value) =>
      /^[1-9]\d{0,5}$/.test(value)
        ? Number(value)
        : { wrong: 'is not a whole number from 1 up', fix: 'write digits alone, like 4' },
    { reads: 'integer', editor: { type: ['string', 'integer'] } },
  );

/** A reading as its instrument showed it: the number and the decimals it was read with. */
export interface ReadValue {
  readonly value: number;
  readonly decimals: number;
}

/** One value of a reading. */
export const readValue = () =>
  readBy<ReadValue>(
    'value',
    (written) => {
      const value = readNumber(written);
      if (value !== undefined) return { value, decimals: decimalsOf(written) };
      return {
        wrong: 'is not a number',
        fix: /^-?\d+,\d+$/.test(written)
          ? `write "${written.replace(',', '.')}"`
          : 'write the number alone; its unit stands in "unit"',
      };
    },
    { editor: numberOrText },
  );

/** `true` or `false`. */
export const flag = () =>
  readBy<boolean>(
    'flag',
    (value) =>
      value === 'true' || value === 'false'
        ? value === 'true'
        : { wrong: 'is neither true nor false', fix: 'write true or false' },
    { editor: { type: ['string', 'boolean'] } },
  );

/** A place in a video, `4:32`, as seconds. */
export const moment = () =>
  readBy<number>(
    'moment',
    (value) =>
      parseMoment(value) ?? {
        wrong: 'is not a time in a video',
        fix: 'write minutes and seconds, like 4:32',
      },
    { editor: { type: 'string' } },
  );

/** An https address. */
export const address = (facts: FieldFacts = {}) =>
  readBy<string>(
    'address',
    (value) =>
      /^https:\/\/[^\s/]+(\/\S*)?$/.test(value) && URL.canParse(value)
        ? value
        : {
            wrong: 'is not an https address',
            fix: /^http:/.test(value)
              ? `write "${value.replace(/^http:/, 'https:')}"`
              : 'write it whole, like https://example.org/',
          },
    { editor: { type: 'string', format: 'uri' }, ...facts },
  );

/** A list of at least so many items; in a CSV cell they are separated by spaces. */
export const listOf = <S extends z.ZodType<unknown, string>>(item: S, least = 0) =>
  z
    .union([
      z.string().transform((cell) => cell.split(/\s+/).filter((part) => part !== '')),
      z.array(z.string()),
    ])
    .pipe(z.array(item).min(least))
    .meta({ item });
