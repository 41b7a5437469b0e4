import { describe, expect, it } from 'vitest';
import { check, problemsOf } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

describe('a date that is none', () => {
  const day = (instead: string) => check({ 'press/ledger/hours.csv': ['2025-03-08', instead] });

  it('is given as it must be typed when it can mean one day only', async () => {
    expect(await day('13/3/2025')).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:7
        date: "13/3/2025" is not a date
        → write "2025-03-13""
    `);
    expect(await day('2025/3/8')).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:7
        date: "2025/3/8" is not a date
        → write "2025-03-08""
    `);
  });

  it('is not guessed when day and month can be either', async () => {
    expect(await day('8/3/2025')).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:7
        date: "8/3/2025" is not a date
        → write year-month-day, like 2025-03-08"
    `);
  });

  it('may look right: no February has 30 days', async () => {
    expect(await day('2025-02-30')).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:7
        date: "2025-02-30" is not a date
        → that month has 28 days"
    `);
  });
});

describe('a day in the future', () => {
  it('is refused for what has happened, with the same day a year before', async () => {
    const found = await check({ 'press/ledger/hours.csv': ['2025-03-08', '2026-03-08'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:7
        date: "2026-03-08" is in the future (today is 2025-06-15)
        → write the day it happened; "2025-03-08"?"
    `);
  });

  it('is refused for a step of a part, the end of a phase, and the day of writing down', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['fitted: 2025-04-12', 'fitted: 2025-07-01'],
      'press/phases.yaml': [
        'planned-hours: "12:00"',
        'planned-hours: "12:00"\n  finished: 2025-06-16',
      ],
      'press/ledger/readings.csv': `id,spec,date,state,values,unit,instrument,recorded
r-001,ram-play,2025-03-02,as-found,0.41,mm,dial-indicator,2025-06-15
r-002,ram-play,2025-04-13,after,0.08,mm,dial-indicator,2025-06-16
`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:11
        fitted: "2025-07-01" is in the future (today is 2025-06-15)
        → write the day it happened; "2024-07-01"?
      press/ledger/readings.csv:3:56
        recorded: "2025-06-16" is in the future (today is 2025-06-15)
        → write the day it happened; "2024-06-16"?
      press/phases.yaml:7:13
        finished: "2025-06-16" is in the future (today is 2025-06-15)
        → write the day it happened; "2024-06-16"?"
    `);
  });

  it('may be planned', async () => {
    const found = await check({ 'press/phases.yaml': ['2025-05-31', '2027-05-31'] });
    expect(found).toBe('');
  });

  it('is reckoned where the machine stands, not where the computer does', async () => {
    const late = new Date('2025-06-15T23:30:00Z');
    const onThe16th = { 'press/ledger/hours.csv': ['2025-03-08', '2025-06-16'] } as const;
    expect(await problemsOf(onThe16th, late)).toEqual([]);

    const elsewhere = { ...onThe16th, 'press/project.yaml': ['Europe/London', 'UTC'] } as const;
    expect((await problemsOf(elsewhere, late)).map(({ code }) => code)).toEqual(['date/future']);
  });
});

describe('days that follow one another', () => {
  it('do so for the steps of a part, each against the one before it', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['got: 2025-03-10', 'wanted: 2025-03-12\n  got: 2025-03-10'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:8
        got: "2025-03-10" is before wanted (2025-03-12)
        → swap them, or correct the wrong one"
    `);
  });

  it('do so for plans, calibrations and the day of writing down', async () => {
    const found = await check({
      'press/phases.yaml': ['planned-finish: 2025-03-31', 'planned-finish: 2025-02-28'],
      'press/instruments.yaml': ['calibrated: 2024-05-01', 'calibrated: 2025-05-02'],
      'press/ledger/hours.csv': `id,date,hours,phase,work,what,recorded
h-001,2025-03-02,2:30,teardown,clean,Cleaned the frame,2025-03-02
h-002,2025-03-08,5:00,teardown,fit,Screw out,2025-03-07
`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/instruments.yaml:10:20
        calibration-due: "2025-05-01" is before calibrated (2025-05-02)
        → swap them, or correct the wrong one
      press/ledger/hours.csv:3:46
        recorded: "2025-03-07" is before date (2025-03-08)
        → swap them, or correct the wrong one
      press/phases.yaml:5:19
        planned-finish: "2025-02-28" is before planned-start (2025-03-01)
        → swap them, or correct the wrong one"
    `);
  });

  it.each([
    ['rates', 'id,date,recorded,from,to,rate,source', 'x-001,2025-03-02,DAY,EUR,GBP,0.8,A bank'],
    ['searches', 'id,date,recorded,part,result', 's-001,2025-03-02,DAY,gib,none'],
    [
      'orders',
      'id,date,recorded,amount,category,phase,what',
      'o-1,2025-03-02,DAY,9,part,rebuild,It',
    ],
    ['budgets', 'id,date,recorded,amount,phase', 'b-001,2025-03-02,DAY,9,rebuild'],
  ])('hold for the day that one of the %s was written down', async (kind, heading, row) => {
    const written = (day: string) =>
      check({ [`press/ledger/${kind}.csv`]: `${heading}\n${row.replace('DAY', day)}\n` });
    expect(await written('2025-03-02')).toBe('');
    expect(await written('2025-03-01')).toContain(
      'recorded: "2025-03-01" is before date (2025-03-02)',
    );
  });

  it('may be the same day', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['got: 2025-03-10', 'got: 2025-04-12'],
    });
    expect(found).toBe('');
  });
});

describe('the day of an entry', () => {
  it('is the one in the name of its file', async () => {
    expect(
      await check({ [ENTRY]: ['date: 2025-04-13', 'date: 2025-04-14'] }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:3:7
        date: "2025-04-14" in the front matter, and "2025-04-13" in the file name
        → write "date: 2025-04-13", or rename the file to "2025-04-14-the-ram-slides.mdx""
    `);
  });

  it('is in the name of its file, with a subject', async () => {
    const text = '---\ntitle: T\ndate: 2025-04-20\nphase: rebuild\nsummary: S\n---\n';
    expect(await check({ 'press/entries/Gib in.mdx': text })).toMatchInlineSnapshot(`
      "press/entries/Gib in.mdx:1:1
        the file name "Gib in.mdx" is not a day and a subject
        → name it like "2025-04-20-cab-off.mdx""
    `);
  });
});
