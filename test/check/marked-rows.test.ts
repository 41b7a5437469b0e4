import { createHash } from 'node:crypto';
import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inContentFolder } from './content-folder.ts';
import { checkAfterMark, edit, markPress, problemsIn } from './marked-content.ts';

const COSTS = 'ledger/costs.csv';
const PARTS = 'ledger/parts.yaml';
const withSuppliers = {
  'press/ledger/costs.csv': `id,date,amount,category,phase,what,supplier
c-001,2025-03-01,180,vehicle,teardown,The press,Hollis & Daughter
c-002,2025-03-10,12.50,part,rebuild,A gib,Threlby
`,
};

describe('a marked row', () => {
  it('that stays as it was is fine, in CSV or YAML, with empty cells and lists however written', async () => {
    expect(await checkAfterMark({})).toBe('');
    const asYaml = `- { id: r-001, spec: ram-play, date: 2025-03-02, state: as-found, values: [0.41, 0.42, "0.41"], unit: mm, instrument: dial-indicator }
- { id: r-002, spec: ram-play, date: 2025-04-13, state: after, values: 0.08 0.08  0.09, unit: mm, instrument: dial-indicator }
`;
    await inContentFolder({}, async (folder) => {
      await markPress(folder, '2025-05-01');
      await rm(join(folder, 'press/ledger/readings.csv'));
      await writeFile(join(folder, 'press/ledger/readings.yaml'), asYaml);
      expect(await problemsIn(folder)).toEqual([]);
    });
  });

  it('that was changed is named with what it was published as, and a correction to type', async () => {
    expect(await checkAfterMark({}, [COSTS, ['12.50', '13.50']])).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        the row "c-002" was marked on 2025-05-01 and is not as it was published: amount was "12.50", is now "13.50"
        → write amount "12.50" again; what is right goes into a row of its own:
      id,date,amount,category,phase,source,parts,what,recorded,corrects,because
      c-003,2025-03-10,13.50,part,rebuild,spare-press,gib,A gib from the spare press,2025-06-15,c-002,why the earlier row was wrong"
    `);
  });

  it('that was changed in YAML gets its correction in YAML', async () => {
    expect(
      await checkAfterMark({}, [PARTS, ['fitted: 2025-04-12', 'fitted: 2025-04-13']]),
    ).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:11
        the row "gib" was marked on 2025-05-01 and is not as it was published: fitted was "2025-04-12", is now "2025-04-13"
        → write fitted "2025-04-12" again; what is right goes into a row of its own:
      - id: gib-2
        name: Gib
        system: ram
        source: spare-press
        got: 2025-03-10
        fitted: 2025-04-13
        recorded: 2025-06-15
        corrects: gib
        because: why the earlier row was wrong"
    `);
  });

  it('that was removed is missed, beside the row that stood before it', async () => {
    expect(
      await checkAfterMark(
        {},
        ['ledger/hours.csv', ['h-002,2025-03-08,5:00,teardown,fit,helper-one,Screw out\n', '']],
        ['entries/2025-04-13-the-ram-slides.mdx', ['h-002, ', '']],
      ),
    ).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:2:1
        the row "h-002" of hours was marked on 2025-05-01 and is gone
        → put it back as it was published:
      id,date,hours,phase,work,who,what
      h-002,2025-03-08,5:00,teardown,fit,helper-one,Screw out
      and take it back by a row in ledger/withdrawals:
      id,date,row,because
      w-1,2025-06-15,h-002,why it no longer counts"
    `);
  });

  it('that stands elsewhere among the rows of its mark is named, and no other is', async () => {
    const first = 'r-001,ram-play,2025-03-02,as-found,0.41 0.42 0.41,mm,dial-indicator\n';
    const second = 'r-002,ram-play,2025-04-13,after,0.08 0.08 0.09,mm,dial-indicator\n';
    expect(
      await checkAfterMark({}, ['ledger/readings.csv', [first + second, second + first]]),
    ).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:2:1
        the row "r-002" stood below "r-001" when it was marked
        → move it back below "r-001""
    `);
  });

  it('gives its id to no row of another kind', async () => {
    const found = await checkAfterMark(
      {},
      ['ledger/searches.csv', ['s-001', 's-002']],
      ['ledger/hours.csv', ['h-001', 's-001']],
    );
    expect(found).toContain(
      'the id "s-001" was marked for a row of searches, and is now one of hours',
    );
    expect(found).toContain('the row "h-001" of hours was marked on 2025-05-01 and is gone');
  });

  it('with a mistake that makes it unreadable is not also called gone', async () => {
    const found = await checkAfterMark({}, [COSTS, ['12.50', 'twelve']]);
    expect(found).toContain('"twelve"');
    expect(found).not.toContain('gone');
  });

  it('may have new rows between it and its neighbours', async () => {
    const more = 'h-002,2025-03-08';
    expect(
      await checkAfterMark({}, [
        'ledger/hours.csv',
        [more, `h-009,2025-03-07,1:00,teardown,clean,,Swept\n${more}`],
      ]),
    ).toBe('');
  });
});

describe('a field that stays at home', () => {
  it('is checked too, and its value is not printed', async () => {
    const found = await checkAfterMark(withSuppliers, [COSTS, ['Threlby', 'Thelby']]);
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:43
        the row "c-002" was marked on 2025-05-01 and is not as it was published: a field that stays at home changed, which is one of: supplier, receipt (or marks-secret.txt is not the one it was marked with)
        → put the field at home back as it was; what is right goes into a row of its own:
      id,date,amount,category,phase,what,supplier,recorded,corrects,because
      c-003,2025-03-10,12.50,part,rebuild,A gib,,2025-06-15,c-002,why the earlier row was wrong"
    `);
    expect(found).not.toContain('Thelby');
  });

  it('is told from a secret that is another', async () => {
    const found = await checkAfterMark(withSuppliers, ['marks-secret.txt', ['0707', '0708']]);
    expect(found).toMatchInlineSnapshot(`
      "press/marks-secret.txt:1:1
        the secret is not the one that the marks were made with: it fits none of the 2 rows with private fields
        → restore marks-secret.txt from a backup"
    `);
  });

  it('that was published can not be withheld afterwards', async () => {
    const csv = withSuppliers['press/ledger/costs.csv'].replace('supplier', 'supplier,withhold');
    const rows = csv.replace('Daughter', 'Daughter,').replace('Threlby', 'Threlby,');
    const before = { 'press/ledger/costs.csv': rows };
    expect(await checkAfterMark(before, [COSTS, ['Threlby,', 'Threlby,amount']])).toContain(
      'amount was "12.50", is now withheld, though everybody has seen it',
    );
  });

  it('can not be checked without the secret, which is said once, with what can be done', async () => {
    await inContentFolder(withSuppliers, async (folder) => {
      await markPress(folder, '2025-05-01');
      await rm(join(folder, 'press/marks-secret.txt'));
      const problems = await problemsIn(folder);
      expect(problems.map(({ code }) => code)).toEqual(['marks/secret-lost']);
      expect(problems[0]?.fix).toContain('--new-secret');
    });
  });
});

describe('a part', () => {
  it('may gain fields after its mark, and is marked again as it has grown', async () => {
    await inContentFolder({}, async (folder) => {
      await markPress(folder, '2025-05-01');
      await edit(folder, [PARTS, ['source: press', 'source: press\n  got: 2025-05-02']]);
      expect(await problemsIn(folder)).toEqual([]);
      expect(await markPress(folder, '2025-05-03')).toBe(1);
      expect(await markPress(folder, '2025-05-03')).toBe(0);
      await edit(folder, [PARTS, ['\n  got: 2025-05-02', '']]);
      const [gone] = await problemsIn(folder);
      expect(gone?.message).toContain('got was "2025-05-02", is now gone');
    });
  });

  it('does not gain a number of pieces: it was one already', async () => {
    expect(
      await checkAfterMark({}, [PARTS, ['source: press', 'source: press\n  quantity: 2']]),
    ).toContain('quantity was not there, is now "2"');
  });
});

describe('a preparation', () => {
  const files = (rest: string) => ({
    'press/ledger/preparations.yaml': `- id: w-1
  date: 2025-04-20
  parts: [nut]
  kind: machining
  what: Bored
  out: true
${rest}`,
  });
  const WORK = 'ledger/preparations.yaml';

  it('may gain the day it came back after its mark, and not another kind of work', async () => {
    const back = ['out: true', 'out: true\n  back: 2025-05-02'] as const;
    expect(await checkAfterMark(files(''), [WORK, back])).toBe('');
    const other = ['kind: machining', 'kind: welding'] as const;
    expect(await checkAfterMark(files(''), [WORK, other])).toContain('kind was "machining"');
  });
});

describe('a receipt', () => {
  const csv = (receipt: string) => ({
    'press/ledger/costs.csv': `id,date,amount,category,phase,what,receipt\nc-001,2025-03-01,180,vehicle,teardown,The press,${receipt}\n`,
  });

  it('that is named like a file has to be in receipts/, and a number on paper has not', async () => {
    expect(await checkAfterMark(csv('25-001'))).toBe('');
    await inContentFolder(
      { ...csv('25-01.pdf'), 'press/receipts/25-001.pdf': 'Paid' },
      async (folder) => {
        expect(await problemsIn(folder)).toMatchObject([
          {
            code: 'file/no-receipt',
            message: 'receipt: there is no file "25-01.pdf" in receipts/',
            fix: 'did you mean "25-001.pdf"?',
          },
        ]);
      },
    );
  });

  it('is bound to its row: another file under its name is noticed', async () => {
    const before = { ...csv('25-001.pdf'), 'press/receipts/25-001.pdf': 'Paid 180' };
    expect(await checkAfterMark(before, ['receipts/25-001.pdf', ['180', '160']])).toMatch(
      /costs\.csv:2:49\n.*receipt-sha256 was "[0-9a-f]{64}", is now "[0-9a-f]{64}"/,
    );
  });
});

describe('a photo that a reading or a finding names', () => {
  const withPhoto = {
    'press/surveys.yaml': '- { id: first, name: First, date: 2025-03-02 }\n',
    'press/ledger/findings.yaml':
      '- { id: f-001, date: 2025-03-02, survey: first, part: nut, found: wear, photo: ram.jpg }\n',
    'press/ledger/readings.csv': `id,spec,date,state,values,unit,instrument,photo
r-001,ram-play,2025-03-02,as-found,0.41 0.42 0.41,mm,dial-indicator,ram.jpg
r-002,ram-play,2025-04-13,after,0.08 0.08 0.09,mm,dial-indicator,
`,
  };

  it('can not be exchanged for another file without a trace', async () => {
    expect(await checkAfterMark(withPhoto)).toBe('');
    const said = await checkAfterMark(withPhoto, ['photos/ram.jpg', ['a picture', 'another']]);
    const hash = (text: string) => createHash('sha256').update(text).digest('hex');
    for (const row of ['r-001', 'f-001']) expect(said).toContain(`the row "${row}" was marked on`);
    expect(said).toContain(`photo-sha256 was "${hash('a picture')}", is now "${hash('another')}"`);
  });
});
