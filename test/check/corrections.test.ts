import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const heading = 'id,date,recorded,amount,category,phase,what,corrects,because';
/** The sound project with these cost rows, and with withdrawals as `id,date,row,because`. */
const withRows = (costs: readonly string[], withdrawals: readonly string[] = []) =>
  check({
    'press/ledger/costs.csv': [heading, ...costs, ''].join('\n'),
    ...(withdrawals.length === 0
      ? {}
      : {
          'press/ledger/withdrawals.csv': ['id,date,row,because', ...withdrawals, ''].join('\n'),
        }),
  });
const first = 'c-001,2025-03-01,,180,vehicle,teardown,The press,,';
const correcting = (id: string, old: string, recorded = '2025-04-01') =>
  `${id},2025-03-01,${recorded},170,vehicle,teardown,The press,${old},Misread the receipt`;

describe('a correction', () => {
  it('that names an earlier row, says why and when is fine', async () => {
    expect(await withRows([first, correcting('c-002', 'c-001')])).toBe('');
  });

  it('in YAML is as fine as in a table', async () => {
    const found = await check({
      'press/ledger/parts.yaml': [
        '- id: nut',
        `- id: gib-2
  name: Gib, long
  system: ram
  source: spare-press
  corrects: gib
  because: It was the long one
  recorded: 2025-04-20
- id: nut`,
      ],
    });
    expect(found).toBe('');
  });

  it('without a reason or a day is refused for each', async () => {
    const found = await withRows([first, 'c-002,2025-03-01,,170,vehicle,teardown,It,c-001,']);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:43
        corrects: "c-001" is replaced without "because"
        → fill in "because": why the earlier row was wrong
      press/ledger/costs.csv:3:43
        corrects: "c-001" is replaced without "recorded"
        → fill in "recorded": the day this correction is written down"
    `);
  });

  it('of a row that was corrected already names the one to correct instead', async () => {
    const found = await withRows([
      first,
      correcting('c-002', 'c-001'),
      correcting('c-003', 'c-001', '2025-04-02'),
    ]);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:4:60
        "c-001" is replaced already, by "c-002"
        → correct "c-002" instead"
    `);
  });

  it('of a correction is fine', async () => {
    const chain = [first, correcting('c-002', 'c-001'), correcting('c-003', 'c-002', '2025-04-02')];
    expect(await withRows(chain)).toBe('');
  });

  it('on the day the old row was written down is fine, a day before is not', async () => {
    expect(await withRows([first, correcting('c-002', 'c-001', '2025-03-01')])).toBe('');

    const late = first.replace('03-01,,', '03-01,2025-03-20,');
    expect(await withRows([late, correcting('c-002', 'c-001', '2025-03-20')])).toBe('');
    const found = await withRows([late, correcting('c-002', 'c-001', '2025-03-19')]);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        recorded: "2025-03-19" is before "c-001" was written down (2025-03-20)
        → write the day of the correction"
    `);
  });

  it('may not lie in the future', async () => {
    expect(await withRows([first, correcting('c-002', 'c-001', '2025-06-15')])).toBe('');
    const found = await withRows([first, correcting('c-002', 'c-001', '2025-06-16')]);
    expect(found).toContain('recorded: "2025-06-16" is in the future (today is 2025-06-15)');
  });

  it('of a row of another kind says where that row is', async () => {
    const found = await withRows([first, correcting('c-002', 'h-001')]);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:60
        unknown cost row "h-001"
        → "h-001" is in hours; name one of the costs"
    `);
  });

  it('of a row that is not there names the one that was meant', async () => {
    const found = await withRows([first, correcting('c-002', 'c-01')]);
    expect(found).toContain('unknown cost row "c-01"\n  → did you mean "c-001"?');
  });
});

describe('corrections that go round in a ring', () => {
  const ring = (length: number) =>
    withRows(
      Array.from({ length }, (_, index) =>
        correcting(`c-${index + 1}`, `c-${((index + 1) % length) + 1}`),
      ),
    );

  it('of one', async () => {
    expect(await ring(1)).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:58
        the corrections go round in a ring: "c-1" corrects "c-1"
        → let the first of them correct nothing"
    `);
  });

  it('of two', async () => {
    expect(await ring(2)).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:58
        the corrections go round in a ring: "c-2" corrects "c-1" corrects "c-2"
        → let the first of them correct nothing"
    `);
  });

  it('of three are told once', async () => {
    expect(await ring(3)).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:4:58
        the corrections go round in a ring: "c-3" corrects "c-1" corrects "c-2" corrects "c-3"
        → let the first of them correct nothing"
    `);
  });
});

describe('a withdrawal', () => {
  const because = 'Paid for another machine';

  it('of a row is fine from the day of the row on', async () => {
    expect(await withRows([first], [`w-001,2025-03-01,c-001,${because}`])).toBe('');
    const found = await withRows([first], [`w-001,2025-02-28,c-001,${because}`]);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/withdrawals.csv:2:7
        date: "2025-02-28" is before "c-001" was written down (2025-03-01)
        → write the day of the correction"
    `);
  });

  it('of a corrected row names the row to withdraw instead', async () => {
    const found = await withRows(
      [first, correcting('c-002', 'c-001')],
      [`w-001,2025-04-02,c-001,${because}`],
    );
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/withdrawals.csv:2:18
        "c-001" is replaced already, by "c-002"
        → withdraw "c-002" instead"
    `);
  });

  it('of a row that is corrected afterwards asks for a new row', async () => {
    const found = await withRows(
      [first, correcting('c-002', 'c-001', '2025-04-02')],
      [`w-001,2025-04-01,c-001,${because}`],
    );
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:60
        "c-001" is withdrawn already, by "w-001"
        → write it anew as a row of its own"
    `);
  });

  it('of a correction is fine', async () => {
    const rows = [first, correcting('c-002', 'c-001')];
    expect(await withRows(rows, [`w-001,2025-04-01,c-002,${because}`])).toBe('');
  });

  it('of a withdrawal is refused', async () => {
    const found = await withRows(
      [first],
      [`w-001,2025-04-01,c-001,${because}`, `w-002,2025-04-02,w-001,${because}`],
    );
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/withdrawals.csv:3:18
        row: "w-001" is a withdrawal itself
        → write the withdrawn row anew instead"
    `);
  });

  it('without a reason is refused', async () => {
    const found = await withRows([first], ['w-001,2025-04-01,c-001,']);
    expect(found).toContain('"because" is missing');
  });

  it('of a row that is not there is refused', async () => {
    const found = await withRows([first], [`w-001,2025-04-01,c-009,${because}`]);
    expect(found).toContain('unknown ledger row "c-009"');
  });
});

describe('a withdrawal of a part', () => {
  const withdrawn = (row: string) =>
    ({
      'press/ledger/withdrawals.csv': `id,date,row,because\nw-001,2025-05-01,${row},It was another\n`,
    }) as const;

  it('that no row names is fine', async () => {
    expect(await check(withdrawn('nut'))).toBe('');
  });

  it('that a row still names is refused', async () => {
    expect(await check(withdrawn('gib'))).toMatchInlineSnapshot(`
      "press/ledger/withdrawals.csv:2:18
        row: "gib" is still named by "c-002"
        → correct "c-002" first, or correct the row instead"
    `);
  });

  it('by the id of its correction is refused as well', async () => {
    const found = await check({
      ...withdrawn('gib-2'),
      'press/ledger/parts.yaml': [
        '- id: nut',
        '- id: gib-2\n  name: Gib\n  system: ram\n  source: press\n  corrects: gib\n  because: Wrong source\n  recorded: 2025-04-20\n- id: nut',
      ],
    });
    expect(found).toContain('row: "gib-2" is still named by "c-002"');
  });

  it('that only rows name that no longer count is fine', async () => {
    const found = await check({
      'press/ledger/costs.csv': `id,date,recorded,amount,category,phase,parts,what,corrects,because
c-001,2025-03-10,,12.50,part,rebuild,gib,A gib,,
c-002,2025-03-10,2025-04-01,12.50,part,rebuild,,A strip of brass,c-001,It was no gib
`,
      'press/ledger/searches.csv': undefined,
      ...withdrawn('gib'),
    });
    expect(found).toBe('');
  });
});

describe('a withdrawal of an order', () => {
  const orders = `id,date,amount,category,phase,what
o-001,2025-03-01,40,part,rebuild,Two bushes
`;
  const withdrawal = 'id,date,row,because\nw-001,2025-05-01,o-001,Never ordered\n';

  it('is fine until a cost row pays it', async () => {
    const files = {
      'press/ledger/orders.csv': orders,
      'press/ledger/withdrawals.csv': withdrawal,
    };
    expect(await check(files)).toBe('');
    const paid = await check({
      ...files,
      'press/ledger/costs.csv': `id,date,amount,category,phase,order,what
c-001,2025-03-10,20,part,rebuild,o-001,Deposit
`,
    });
    expect(paid).toContain('row: "o-001" is still named by "c-001"');
  });
});
