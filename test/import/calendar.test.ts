import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCalendar } from '../../src/import/calendar.ts';
import {
  calendarRefusal,
  contentLines,
  foldedLine,
  textsOf,
} from '../../src/import/calendar-lines.ts';
import { eventOutcomes } from '../../src/import/event-outcomes.ts';
import type { Outcome } from '../../src/import/outcome.ts';
import { refusedCalendar } from '../../src/import/refused-events.ts';
import type { ImportMapping } from '../../src/model/kinds.ts';
import { calendarOf, eventOf, samples } from './rfc5545.ts';

const MAPPING: ImportMapping = {
  id: 'shop',
  kind: 'hours',
  encoding: 'utf-8',
  columns: {},
  dates: 'YYYY-MM-DD',
  decimals: '1234.56',
  moneyOut: 'negative',
  fixed: { withhold: 'what' },
  rules: [],
};
const NOTHING = { imported: new Map(), rowIds: new Set<string>() };

function outcomesOf(bytes: Uint8Array, zone = 'Europe/London', mapping = MAPPING): Outcome[] {
  const calendar = readCalendar(bytes);
  if ('wrong' in calendar) throw new Error(calendar.wrong);
  return eventOutcomes(calendar, mapping, zone, NOTHING);
}

const reason = (outcome: Outcome | undefined) => outcome && 'why' in outcome && outcome.why;

function timesOf(lines: string, zone?: string): string {
  const [outcome] = outcomesOf(calendarOf(eventOf(lines)), zone);
  if (outcome?.is !== 'added') return String(reason(outcome));
  return `${outcome.row.fields.date} ${outcome.row.fields.hours}`;
}

describe('samples of RFC 5545', () => {
  const told = {
    'section 3.6.1, a meeting': '1997-09-03 2:30 Annual Employee Review',
    'section 3.6.1, a reminder': '1997-04-01 8:30 Laurel is in sensitivity awareness class.',
    'section 3.6.1, an anniversary': /repeats \(RRULE\)/,
    'section 3.6.1, several days': /all day/,
    'section 3.6.2, a to-do': /to-do/,
    'section 4, a conference of three days': /lasts 55:30/,
    'section 4, a meeting in New York': '1998-03-12 1:00 XYZ Project Review',
    'section 4, an event with an attachment':
      '1997-03-24 8:30 Calendaring Interoperability Planning Meeting',
    'section 4, a to-do with an alarm': /to-do/,
    'section 4, busy time': /busy time/,
  } as const;

  test.each(Object.entries(told))('%s', (name, wanted) => {
    const outcomes = outcomesOf(calendarOf(samples[name as keyof typeof samples]));
    expect(outcomes).toHaveLength(1);
    const [outcome] = outcomes;
    const { date, hours, what } = outcome?.is === 'added' ? outcome.row.fields : {};
    if (typeof wanted === 'string') expect(`${date} ${hours} ${what}`).toBe(wanted);
    else expect(reason(outcome)).toMatch(wanted);
  });

  test('section 3.1: a folded line is one line', () => {
    const [line] = contentLines(
      Buffer.from(
        'DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n',
      ),
    );
    expect(line?.value).toBe('This is a long description that exists on a long line.');
  });

  test('section 3.2: a quoted parameter may hold what else parts lines', () => {
    const [line] = contentLines(
      Buffer.from(
        'DESCRIPTION;ALTREP="cid:part1.0001@example.org":The Fall\'98 Wild\r\n   Wizards Conference - - Las Vegas\\, NV\\, USA\r\n',
      ),
    );
    expect(line?.params.get('ALTREP')).toBe('cid:part1.0001@example.org');
    expect(textsOf(line?.value ?? '')).toEqual([
      "The Fall'98 Wild  Wizards Conference - - Las Vegas, NV, USA",
    ]);
  });

  test('section 3.3.5: the three forms of 14 July 1997, 13:30 in New York', () => {
    const until = (start: string) => timesOf(`${start}\nDURATION:PT1H`, 'America/New_York');
    expect(until('DTSTART:19970714T133000')).toBe('1997-07-14 1:00');
    expect(until('DTSTART:19970714T173000Z')).toBe('1997-07-14 1:00');
    expect(until('DTSTART;TZID=America/New_York:19970714T133000')).toBe('1997-07-14 1:00');
    expect(until('DTSTART:19980119T230000-0800')).toContain('no date and time');
  });

  test('section 3.3.5: an hour that comes twice is the first, one that is skipped counts from before', () => {
    const zone = 'DTSTART;TZID=America/New_York';
    expect(timesOf(`${zone}:20071104T013000\nDTEND:20071104T053100Z`)).toBe('2007-11-04 0:01');
    expect(timesOf(`${zone}:20070311T023000\nDTEND:20070311T073100Z`)).toBe('2007-03-11 0:01');
    expect(timesOf('DTSTART:19970630T235960Z\nDTEND:19970701T005959Z')).toBe('1997-07-01 1:00');
  });

  test('section 3.3.6: a day of the calendar may have 23 hours or 25', () => {
    const zone = 'DTSTART;TZID=Europe/London';
    expect(timesOf(`${zone}:20250330T003000\nDURATION:P1D`)).toBe('2025-03-30 23:00');
    expect(timesOf(`${zone}:20250330T003000\nDURATION:PT24H`)).toBe('2025-03-30 24:00');
    expect(timesOf(`${zone}:20251025T120000\nDURATION:P1D`)).toContain('lasts 25:00');
    expect(timesOf(`${zone}:20250301T120000\nDURATION:P15DT5H0M20S`)).toContain('lasts 365:00');
    expect(timesOf(`${zone}:20250301T120000\nDURATION:P7W`)).toMatch(/lasts 11\d\d:00/);
    for (const none of ['PT', 'P', '1H', 'P1M', 'PT1H30'])
      expect(timesOf(`${zone}:20250301T120000\nDURATION:${none}`)).toContain('no length of time');
  });

  test('section 3.3.11: backslashes take the meaning from signs', () => {
    expect(textsOf('Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.')).toEqual([
      'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.',
    ]);
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'an\\,;\n') }), (text) => {
        const escaped = text.replace(/[\\;,]/g, '\\$&').replaceAll('\n', '\\n');
        expect(textsOf(escaped)).toEqual([text]);
      }),
    );
    expect(textsOf('a\\;b\\\\n\\,c,d\\N')).toEqual(['a;b\\n,c', 'd\n']);
  });
});

describe('an event', () => {
  test.each([
    ['DTSTART:20250302T100000', 'neither DTEND nor DURATION'],
    ['DTEND:20250302T100000', 'no DTSTART'],
    ['DTSTART:20250302T100000\nDTEND:20250302T090000', 'ends before it begins'],
    ['DTSTART:20250302T100000\nDTEND:20250302T100010', 'lasts no minute'],
    ['DTSTART:20250302T100000\nDTEND:20250302T110000\nDURATION:PT1H', 'both DTEND and DURATION'],
    ['DTSTART;TZID=Nowhere:20250302T100000\nDURATION:PT1H', 'time zone "Nowhere"'],
    ['DTSTART:20250231T100000\nDURATION:PT1H', 'no date and time'],
    ['DTSTART:20250302T100000\nDURATION:PT1H\nRDATE:20250309T100000', 'repeats (RDATE)'],
    ['DTSTART:20250302T100000\nDURATION:PT1H\nhalf a line', 'is no content line: half a line'],
    ['DTSTART:20250302T100000\nDTSTART:20250302T110000\nDURATION:PT1H', 'DTSTART twice'],
  ])('that says no hours is refused with the reason: %j', (lines, why) => {
    expect(timesOf(lines)).toContain(why);
  });

  test('counts on the day on which it begins where the machine stands', () => {
    const late = 'DTSTART:20250302T233000Z\nDTEND:20250303T013000Z';
    expect(timesOf(late)).toBe('2025-03-02 2:00');
    expect(timesOf(late, 'Europe/Berlin')).toBe('2025-03-03 2:00');
    expect(timesOf('DTSTART;TZID=/example.org/Europe/Berlin:20250303T003000\nDURATION:PT2H')).toBe(
      '2025-03-02 2:00',
    );
  });

  test('that was cancelled is skipped, by itself or with its calendar', () => {
    const event = 'DTSTART:20250302T100000\nDURATION:PT1H';
    expect(outcomesOf(calendarOf(eventOf(`${event}\nSTATUS:CANCELLED`)))[0]?.is).toBe('skipped');
    expect(outcomesOf(calendarOf('METHOD:CANCEL\n', eventOf(event)))[0]?.is).toBe('skipped');
  });

  test('of a series that was moved is one of its own; the same one twice is refused', () => {
    const at = (day: number) =>
      `DTSTART:202503${day}T100000\nDURATION:PT1H\nRECURRENCE-ID:202503${day}T090000`;
    const outcomes = outcomesOf(calendarOf(eventOf(at(10)), eventOf(at(17)), eventOf(at(17))));
    expect(outcomes.map(({ is }) => is)).toEqual(['added', 'added', 'refused']);
    const [first, second] = outcomes;
    expect(first?.is === 'added' && first.key).not.toBe(second?.is === 'added' && second.key);
  });

  test('is known by its UID, whatever else of it was changed', () => {
    const key = (lines: string, uid?: string) => {
      const [outcome] = outcomesOf(calendarOf(eventOf(lines, uid)));
      return outcome?.is === 'added' ? outcome.key : undefined;
    };
    const one = 'DTSTART:20250302T100000\nDURATION:PT1H\nSUMMARY:Clean';
    expect(key(one)).toBe(key('DTSTART:20250305T100000\nDURATION:PT3H\nSUMMARY:Fit'));
    expect(key(one)).not.toBe(key(one, 'another@example.com'));
  });

  test('is looked at by rules in its words, and not in its UID', () => {
    const rules = [{ has: ['shop'], skip: 'not this machine' }];
    const event = eventOf(
      'DTSTART:20250302T100000\nDURATION:PT1H\nSUMMARY:Clean',
      'a@shop.example',
    );
    expect(outcomesOf(calendarOf(event), 'UTC', { ...MAPPING, rules })[0]?.is).toBe('added');
    const named = event.replace('Clean', 'Shop floor');
    expect(outcomesOf(calendarOf(named), 'UTC', { ...MAPPING, rules })[0]?.is).toBe('skipped');
  });

  test('that is not public is refused while its text would be published', () => {
    const bytes = calendarOf(samples['section 3.6.1, a meeting']);
    expect(reason(outcomesOf(bytes, 'UTC', { ...MAPPING, fixed: {} })[0])).toContain('CLASS');
    expect(outcomesOf(bytes)[0]?.is).toBe('added');
  });
});

describe('a file', () => {
  test('whose components do not fit is refused whole, with the line', () => {
    const whole = calendarOf(samples['section 3.6.1, a meeting']);
    const wrong = (text: string) => {
      const read = readCalendar(Buffer.from(text));
      return 'wrong' in read ? read.wrong : undefined;
    };
    expect(wrong(whole.toString().slice(0, -40))).toContain('VEVENT of line 4 never ends');
    expect(wrong(whole.toString().replace('END:VEVENT', 'END:VTODO'))).toContain('line 12: VTODO');
    expect(wrong(`${whole}X:1\r\n`)).toContain('line 14 stands in no calendar');
  });

  test('may fold inside a character', () => {
    const bytes = Buffer.from(calendarOf(eventOf('SUMMARY:Löten')));
    const at = bytes.indexOf('ö') + 1;
    const cut = Buffer.concat([bytes.subarray(0, at), Buffer.from('\r\n '), bytes.subarray(at)]);
    expect(calendarRefusal(cut, 'a.ics')).toBeUndefined();
    expect(contentLines(cut).map(({ value }) => value)).toContain('Löten');
    const latin = Buffer.from(bytes.toString(), 'latin1');
    expect(calendarRefusal(latin, 'a.ics')).toContain('0xF6 on line 7');
  });

  test('of what was refused holds the same components, and is refused for the same reasons', () => {
    const bytes = calendarOf(...Object.values(samples));
    const calendar = readCalendar(bytes);
    if ('wrong' in calendar) throw new Error(calendar.wrong);
    const refused = outcomesOf(bytes).filter((outcome) => outcome.is === 'refused');
    const once = refusedCalendar(calendar, refused);
    const again = outcomesOf(once);
    expect(again.map(reason)).toEqual(refused.map(({ why }) => why));
    expect(once.toString()).toContain('X-REFUSED-BECAUSE:line ');
    const lengths = once
      .toString()
      .split('\r\n')
      .map((line) => Buffer.byteLength(line));
    expect(Math.max(...lengths)).toBeLessThan(76);
  });
});

test('Folding loses no character and keeps lines within 75 octets', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (value) => {
      const text = `SUMMARY:${value.replace(/[\r\n\ufeff]/g, '')}`.normalize('NFC');
      const folded = foldedLine(text);
      for (const line of folded.trimEnd().split('\r\n'))
        expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(contentLines(Buffer.from(folded))[0]?.text).toBe(text);
    }),
  );
});
