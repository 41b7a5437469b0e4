import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const HEAD = 'id,date,amount,category,phase,what';
const ORDERS = 'press/ledger/orders.csv';
const COSTS = 'press/ledger/costs-late.csv';
const ordered = (row = 'o-1,2025-03-20,80.00,part,rebuild,Two bronze nuts') => `${HEAD}\n${row}\n`;
const paid = (fields: string, values: string) =>
  `${HEAD},order${fields}\nc-9,2025-03-25,${values}\n`;

describe('a cost row that pays an order', () => {
  it('in its currency, on or after its day, is fine', async () => {
    const files = { [ORDERS]: ordered(), [COSTS]: paid('', '80.00,part,rebuild,Nuts,o-1') };
    expect(await check(files)).toBe('');
  });

  it('in another currency is told, with both', async () => {
    const files = { [ORDERS]: ordered(), [COSTS]: paid('', '80.00 EUR,part,rebuild,Nuts,o-1') };
    const rates = 'id,date,from,to,rate,source\nx-1,2025-03-01,EUR,GBP,0.85,a bank\n';
    expect(await check({ ...files, 'press/ledger/rates.csv': rates })).toMatchInlineSnapshot(`
      "press/ledger/costs-late.csv:2:16
        amount: "80.00 EUR" pays the order "o-1", which is in GBP
        → write in both what was agreed and paid in one currency, or leave "order" out here and fill in "closed" there"
    `);
  });

  it('may not withhold its amount, which the rest of the order would give away', async () => {
    const files = {
      [ORDERS]: ordered(),
      [COSTS]: paid(',withhold', '80.00,part,rebuild,Nuts,o-1,amount'),
    };
    expect(await check(files)).toMatchInlineSnapshot(`
      "press/ledger/costs-late.csv:2:40
        order: "o-1" would show the amount that this row withholds
        → leave "order" out, and fill in "closed" in the order
      press/ledger/costs-late.csv:2:44 (warning)
        withhold: "c-9" is the only withheld amount of category "part", whose total tells it
        → withhold another amount of that category too, or give it the category of another"
    `);
  });

  it('before the day of the order is a warning', async () => {
    const files = {
      [ORDERS]: ordered('o-1,2025-03-26,80.00,part,rebuild,Two bronze nuts'),
      [COSTS]: paid('', '80.00,part,rebuild,Nuts,o-1'),
    };
    expect(await check(files)).toMatchInlineSnapshot(`
      "press/ledger/costs-late.csv:2:5 (warning)
        date: "2025-03-25" is before the order that it pays, "o-1" (2025-03-26)
        → correct the wrong one, if one is"
    `);
  });

  it('is held to the order as it was corrected, not as it was first written', async () => {
    const order = [
      `${HEAD},corrects,recorded,because`,
      'o-1,2025-03-26,80.00,part,rebuild,Two bronze nuts,,,',
      'o-2,2025-03-20,80.00,part,rebuild,Two bronze nuts,o-1,2025-04-01,Dated by the letter',
    ];
    const files = {
      [ORDERS]: `${order.join('\n')}\n`,
      [COSTS]: paid('', '80.00,part,rebuild,Nuts,o-1'),
    };
    expect(await check(files)).toBe('');
  });

  it('names one that is there', async () => {
    const files = { [ORDERS]: ordered(), [COSTS]: paid('', '80.00,part,rebuild,Nuts,o-2') };
    expect(await check(files)).toMatchInlineSnapshot(`
      "press/ledger/costs-late.csv:2:40
        unknown order "o-2"
        → did you mean "o-1"?"
    `);
  });
});
