import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

describe('an amount', () => {
  const amount = (instead: string) => check({ 'press/ledger/costs.csv': ['12.50', instead] });

  it('with a sign of a currency is given with its code', async () => {
    expect(await amount('£12.50')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "£12.50" is not an amount
        → write "12.50 GBP""
    `);
  });

  it('with a decimal comma and thousands is given with a point', async () => {
    expect(await amount('"1.212,50"')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "1.212,50" is not an amount
        → write "1212.50""
    `);
  });

  it('that is negative is a payment back, which its kind says', async () => {
    expect(await amount('-12.50')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "-12.50" is not an amount
        → write "12.50" and set kind to sale, refund or deposit-back"
    `);
  });

  it('that is no number is refused', async () => {
    expect(await amount('a lot')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "a lot" is not an amount
        → write digits with a decimal point, like 12.50"
    `);
  });

  it('in a currency that does not exist is refused', async () => {
    expect(await amount('12.50 GPB')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "12.50 GPB" has an unknown currency "GPB"
        → did you mean "GBP"?"
    `);
  });

  it('with more decimals than its currency has is refused', async () => {
    expect(await amount('12.505')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "12.505" has more decimals than GBP has (2)
        → write what was paid"
    `);
    expect(await amount('12.50 JPY')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: "12.50 JPY" has more decimals than JPY has (0)
        → write what was paid"
    `);
  });

  it('of a searched part is held to the same rules', async () => {
    const found = await check({ 'press/ledger/searches.csv': ['14.00', '14.005'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:2:38
        price: "14.005" has more decimals than GBP has (2)
        → write what was paid"
    `);
  });
});

describe('a cost without a currency', () => {
  it('is in the project’s own', async () => {
    expect(await check({})).toBe('');
  });

  it('is refused where the project has none of its own', async () => {
    const found = await check({
      'press/project.yaml': ['currency: GBP\n', ''],
      'press/ledger/costs.csv': ['12.50', '12.50 GBP'],
      'press/ledger/searches.csv': undefined,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:18
        amount: "180" has no currency, and the project has none of its own
        → write "180 GBP" (with your own code), or add "currency: …" to project.yaml"
    `);
  });
});

describe('a cost in another currency', () => {
  const inEuro = ['12.50', '12.50 EUR'] as const;
  const rate = (day: string) => `id,date,from,to,rate,source
x-001,${day},EUR,GBP,0.8431,Bank statement of that day
`;

  it('needs a recorded rate', async () => {
    const found = await check({ 'press/ledger/costs.csv': inEuro });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        amount: no recorded rate from EUR to GBP on or before 2025-03-10
        → add a row to ledger/rates: date 2025-03-10, from EUR, to GBP, rate, source"
    `);
  });

  it('needs the rate on or before its day', async () => {
    const after = await check({
      'press/ledger/costs.csv': inEuro,
      'press/ledger/rates.csv': rate('2025-03-11'),
    });
    expect(after).toContain('no recorded rate from EUR to GBP on or before 2025-03-10');

    const same = await check({
      'press/ledger/costs.csv': inEuro,
      'press/ledger/rates.csv': rate('2025-03-10'),
    });
    expect(same).toBe('');
  });

  it('is not served by the rate the other way round', async () => {
    const found = await check({
      'press/ledger/costs.csv': inEuro,
      'press/ledger/rates.csv': rate('2025-03-01').replace('EUR,GBP,0.8431', 'GBP,EUR,1.1861'),
    });
    expect(found).toContain('no recorded rate from EUR to GBP');
  });
});

describe('a rate', () => {
  it('is a decimal number between two currencies', async () => {
    const found = await check({
      'press/ledger/rates.csv': `id,date,from,to,rate,source
x-001,2025-03-01,eur,GBP,"0,8431",Bank statement
`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/rates.csv:2:18
        from: "eur" is not a currency code
        → did you mean "EUR"?
      press/ledger/rates.csv:2:26
        rate: "0,8431" is not a decimal number
        → write "0.8431""
    `);
  });
});

describe('an amount of any kind', () => {
  const kinds = {
    orders: [
      'amount',
      'id,date,amount,category,phase,what',
      'o-001,2025-03-01,9.999,part,rebuild,It',
    ],
    budgets: ['amount', 'id,date,amount,phase', 'b-001,2025-03-01,9.999,rebuild'],
    searches: ['price', 'id,date,part,result,price', 's-001,2025-03-05,gib,none,9.999'],
  } as const;

  it.each(Object.entries(kinds))('in %s has the decimals of its currency', async (kind, rows) => {
    const [field, heading, row] = rows;
    const file = `press/ledger/${kind}.csv`;
    expect(await check({ [file]: `${heading}\n${row}\n` })).toContain(
      `${field}: "9.999" has more decimals than GBP has (2)`,
    );
    expect(await check({ [file]: `${heading}\n${row.replace('9.999', '9.99')}\n` })).toBe('');
  });

  it.each(['orders', 'budgets'] as const)(
    'in %s needs a rate into that of the project',
    async (kind) => {
      const [, heading, row] = kinds[kind];
      const found = await check({
        [`press/ledger/${kind}.csv`]: `${heading}\n${row.replace('9.999', '9.99 EUR')}\n`,
      });
      expect(found).toContain('amount: no recorded rate from EUR to GBP on or before 2025-03-01');
    },
  );

  it('in a search may be in any, since it is in no total', async () => {
    expect(await check({ 'press/ledger/searches.csv': ['14.00', '14.00 EUR'] })).toBe('');
  });

  it.each(['value', 'new-price', 'estimate', 'estimate-low', 'estimate-high', 'asking'])(
    'of a part, its %s, is in that of the project',
    async (field) => {
      const withField = (amount: string) =>
        check({ 'press/ledger/parts.yaml': ['  got: 2025', `  ${field}: ${amount}\n  got: 2025`] });
      expect(await withField('9.99')).not.toContain('currency');
      expect(await withField('9.99 GBP')).not.toContain('currency');
      expect(await withField('9.99 EUR')).toContain(`press/ledger/parts.yaml:5:${field.length + 5}
  ${field}: "9.99 EUR" is not in the project's currency
  → write what it is in GBP`);
      expect(await withField('9.999')).toContain('has more decimals than GBP has (2)');
    },
  );
});

describe('a rate that no longer counts', () => {
  const costs = (date: string) => ({
    'press/ledger/costs.csv': `id,date,recorded,amount,category,phase,what,corrects,because
c-001,2025-03-10,,12.50 EUR,part,rebuild,A gib,,
${date === '' ? '' : `c-002,2025-03-10,${date},11.00,part,rebuild,A gib,c-001,It was in pounds\n`}`,
    'press/ledger/rates.csv': `id,date,from,to,rate,source
x-001,2025-03-01,EUR,GBP,0.8431,A bank
`,
    'press/ledger/withdrawals.csv': `id,date,row,because
w-001,2025-04-01,x-001,Of another year
`,
  });

  it('serves no row that stands', async () => {
    expect(await check(costs(''))).toContain('no recorded rate from EUR to GBP');
  });

  it('is not held against a row that was replaced', async () => {
    expect(await check(costs('2025-03-20'))).toBe('');
  });
});
