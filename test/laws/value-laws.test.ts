import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as field from '../../src/model/fields.ts';
import { amount } from '../../src/model/money-fields.ts';
import { currencyCodes, exponentOf } from '../../src/money/currency.ts';
import { readAmount, toDecimal, toMinor } from '../../src/money/money.ts';
import { addDays, type Day, guessDay, parseDay } from '../../src/time/day.ts';
import { parseDuration, showDuration } from '../../src/time/duration.ts';

const anyDay = fc
  .integer({ min: 0, max: 2_932_896 }) // 1970-01-01 to 9999-12-31
  .map((days) => addDays('1970-01-01' as Day, days));
const anyMoney = fc.record({
  minor: fc.integer({ min: 0, max: 10 ** 12 - 1 }),
  currency: fc.constantFrom(...currencyCodes),
});

describe('what is printed and read again is the same', () => {
  it('for a day', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(parseDay(day)).toBe(day);
      }),
    );
  });

  it('for a day as people write it, wherever it can mean one day only', () => {
    fc.assert(
      fc.property(anyDay, fc.constantFrom('/', '.', '-'), (day, sign) => {
        const [year, month, date] = day.split('-').map(Number);
        expect(guessDay([year, month, date].join(sign))).toBe(day);
        const dayFirst = guessDay([date, month, year].join(sign));
        expect(dayFirst).toBe(Number(date) > 12 ? day : undefined);
      }),
    );
  });

  it('for a length of work, in each of its spellings', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (minutes) => {
        expect(parseDuration(showDuration(minutes))).toBe(minutes);
        expect(parseDuration(`${minutes} min`)).toBe(minutes);
        expect(parseDuration(`${minutes / 4} h`)).toBe(minutes * 15);
      }),
    );
  });

  it('for an amount, in every currency', () => {
    fc.assert(
      fc.property(anyMoney, (money) => {
        const written = readAmount(`${toDecimal(money)} ${money.currency}`);
        expect(toMinor(written?.decimal ?? '', written?.currency ?? '')).toEqual(money);
      }),
      { numRuns: 1000 },
    );
  });

  it('for an id, with spaces around it or not', () => {
    const word = fc.string({ unit: fc.constantFrom(...'abcxyz019'), minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 4 }), (words) => {
        expect(field.id().parse(words.join('-'))).toBe(words.join('-'));
        expect(field.id().parse(` ${words.join('-')}\n`)).toBe(words.join('-'));
      }),
    );
  });
});

describe('what is refused', () => {
  it('for an amount, is one decimal more than the currency has', () => {
    fc.assert(
      fc.property(anyMoney, ({ minor, currency }) => {
        const exponent = exponentOf(currency) ?? 0;
        fc.pre(exponent < 4);
        const text = `${minor}.${'1'.repeat(exponent + 1)}`;
        expect(amount().safeParse(`${text} ${currency}`).success).toBe(false);
      }),
    );
  });

  it('for a day, is one that the calendar does not have', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 99 }), (day, date) => {
        const text = `${day.slice(0, 8)}${String(date).padStart(2, '0')}`;
        const [year = 0, month = 0] = day.split('-').map(Number);
        const daysInMonth = new Date(Date.UTC(year, month, 0)).getUTCDate();
        expect(parseDay(text)).toBe(date <= daysInMonth ? text : undefined);
      }),
    );
  });
});

describe('what a problem says to write', () => {
  const typed = fc.string({
    unit: fc.constantFrom(...'0123456789.,:;/- +−_£€$hminEURxyzÄé°N·mk"'),
    maxLength: 12,
  });
  const fields = {
    id: field.id(),
    day: field.day(),
    duration: field.duration(),
    amount: amount(),
    quantity: field.quantity(),
    unit: field.unit(),
    decimal: field.decimal(),
    'value of a reading': field.readValue(),
    address: field.address(),
  };

  for (const [name, schema] of Object.entries(fields))
    it(`is accepted when it is written, for any wrong ${name}`, () => {
      fc.assert(
        fc.property(typed, (text) => {
          for (const issue of schema.safeParse(text).error?.issues ?? []) {
            const fix = issue.code === 'custom' ? issue.params?.['fix'] : undefined;
            const [, offered] = /^write "(.*)"( and set .*)?$/.exec(fix ?? '') ?? [];
            if (offered !== undefined) expect(schema.safeParse(offered).error).toBeUndefined();
          }
        }),
        { numRuns: 3000 },
      );
    });
});
