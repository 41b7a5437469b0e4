import { describe, expect, it } from 'vitest';
import { sortProblems } from '../../src/read/problem.ts';
import { type Changes, check, problemsOf } from './content-folder.ts';

describe('the sound project', () => {
  it('has no problem', async () => {
    expect(await check({})).toBe('');
  });
});

describe('one slip gives one problem:', () => {
  const slips: Readonly<Record<string, [Changes, code: string]>> = {
    'a phase with a bad date does not make its rows name an unknown phase': [
      { 'press/phases.yaml': ['2025-03-31', '2025-03-32'] },
      'value/date',
    ],
    'a broken phases.yaml does not make every row name an unknown phase': [
      { 'press/phases.yaml': ['name: Teardown', 'name: "Teardown'] },
      'yaml/broken',
    ],
    'a phases file under a name that is not read does not make every phase unknown': [
      { 'press/phases.yaml': undefined, 'press/phase.yaml': '- id: teardown\n' },
      'file/unknown',
    ],
    'a part without a source does not make its cost, search and system unknown': [
      { 'press/ledger/parts.yaml': ['  source: spare-press\n', ''] },
      'field/missing',
    ],
    'a part without a source does not make its system unknown': [
      {
        'press/ledger/parts.yaml': ['  source: press\n', ''],
        'press/entries/2025-04-13-the-ram-slides.mdx': ['<Tally />', '<Parts system="screw" />'],
      },
      'field/missing',
    ],
    'a project.yaml without a time zone does not leave every amount without a currency': [
      { 'press/project.yaml': ['timeZone: Europe/London\n', ''] },
      'field/missing',
    ],
    'a broken project.yaml does not make people and kinds of work unknown': [
      { 'press/project.yaml': ['work: [clean, fit]', 'work: [clean, fit'] },
      'yaml/broken',
    ],
    'a rate with a bad date does not leave its costs without a rate': [
      {
        'press/ledger/rates.csv':
          'id,date,from,to,rate,source\nx-001,1/3/2025,EUR,GBP,0.8431,Bank\n',
        'press/ledger/costs.csv': ['12.50', '12.50 EUR'],
      },
      'value/date',
    ],
    'a reading with a bad value does not leave the entry without a value to show': [
      { 'press/ledger/readings.csv': ['0.08 0.08 0.09', '0.08 o.08 0.09'] },
      'value/value',
    ],
    'a spec with a bad limit does not make its readings and its links unknown': [
      { 'press/specs.yaml': ['0.10 mm', '0.10'] },
      'value/quantity',
    ],
    'a row with a bad amount is still there to be told about': [
      {
        'press/ledger/costs.csv': ['180', 'much'],
        'press/entries/2025-04-13-the-ram-slides.mdx': ['h-002', 'c-001'],
      },
      'value/amount',
    ],
    'an entry with a bad date does not make the links to it lead nowhere': [
      {
        'press/entries/2025-04-13-the-ram-slides.mdx': ['date: 2025-04-13', 'date: 13 April'],
        'press/entries/2025-04-20-after.mdx':
          '---\ntitle: After\ndate: 2025-04-20\nphase: rebuild\nsummary: S.\n---\n\n[Before](entry:2025-04-13-the-ram-slides)\n',
      },
      'value/date',
    ],
    'a name that stands twice is not also a unit that does not fit': [
      { 'press/instruments.yaml': ['- id: torque-wrench', '- id: dial-indicator'] },
      'id/duplicate',
    ],
  };

  for (const [sentence, [changes, code]] of Object.entries(slips))
    it(sentence, async () => {
      expect((await problemsOf(changes)).map((problem) => problem.code)).toEqual([code]);
    });
});

describe('several slips', () => {
  const slips: Changes = {
    'press/sources.yaml': ['kind: base', 'kind: bass'],
    'press/specs.yaml': ['0.10 mm', '0.10 kg'],
    'press/ledger/hours.csv': `id,date,hours,phase,work,what
h-002,2025-03-08,5:00,teardown,fitt,Screw out
h-002,2027-03-02,2.5 hours,teardwon,clean,Frame
`,
    'press/entries/2025-04-13-the-ram-slides.mdx': ['<Tally />', '<Taly />'],
  };

  it('are all named at once, in the order of files, lines and columns', async () => {
    const places = (await problemsOf(slips)).map(
      ({ file, line, column, code }) => `${file}:${line}:${column} ${code}`,
    );
    expect(places).toMatchInlineSnapshot(`
      [
        "press/entries/2025-04-13-the-ram-slides.mdx:13:1 component/unknown",
        "press/ledger/hours.csv:2:32 id/unknown",
        "press/ledger/hours.csv:3:18 value/hours",
        "press/sources.yaml:2:9 value/word",
        "press/specs.yaml:7:8 unit/other-quantity",
      ]
    `);
  });

  it('are named in the same order whatever order they were found in', async () => {
    const problems = await problemsOf(slips);
    expect(sortProblems(problems.toReversed())).toEqual(problems);
  });
});
