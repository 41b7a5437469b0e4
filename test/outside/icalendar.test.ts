import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCalendar } from '../../src/import/calendar.ts';
import { foldedLine, textsOf } from '../../src/import/calendar-lines.ts';
import { eventTime } from '../../src/import/event-time.ts';
import { calendarOf, eventOf, samples } from '../import/rfc5545.ts';

// Python's icalendar (Debian: python3-icalendar) reads the same bytes. Lengths are taken between moments, so that a change of the
// clocks between start and end counts; a DURATION's days are days of the calendar, its hours exact (RFC 5545, 3.3.6).
const SCRIPT = `
import base64, json, sys
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo
from icalendar import Calendar
HOME = ZoneInfo('Europe/London')
def at(when): return when if when.tzinfo else when.replace(tzinfo=HOME)
def told(event):
    start = event['DTSTART'].dt
    texts = [str(event.get('SUMMARY', '')), str(event.get('DESCRIPTION', ''))]
    if not isinstance(start, datetime): return {'day': None, 'minutes': None, 'texts': texts}
    start = at(start)
    if 'DTEND' in event: end = at(event['DTEND'].dt).astimezone(timezone.utc)
    else:
        length = event['DURATION'].dt
        end = (start + timedelta(days=length.days)).astimezone(timezone.utc) + timedelta(seconds=length.seconds)
    minutes = (end - start.astimezone(timezone.utc)).total_seconds() / 60
    return {'day': start.astimezone(HOME).date().isoformat(), 'minutes': minutes, 'texts': texts}
files = [base64.b64decode(one) for one in json.load(sys.stdin)]
json.dump([[told(event) for event in Calendar.from_ical(one).walk('VEVENT')] for one in files], sys.stdout)
`;

interface Answer {
  readonly day: string | null;
  readonly minutes: number | null;
  readonly texts: readonly string[];
}

function ask(files: readonly Buffer[]): Answer[][] {
  const { status, stdout, stderr } = spawnSync('/usr/bin/python3', ['-c', SCRIPT], {
    input: JSON.stringify(files.map((file) => file.toString('base64'))),
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Answer[][];
}

const present = spawnSync('/usr/bin/python3', ['-c', 'import icalendar']).status === 0;
const ABSENT = 'there is no Python package icalendar here (Debian: python3-icalendar)';

/** What we read of each event, to the minute; undefined where we refuse. */
function ours(file: Buffer) {
  const calendar = readCalendar(file);
  if ('wrong' in calendar) throw new Error(calendar.wrong);
  return calendar.components
    .filter(({ name }) => name === 'VEVENT')
    .map(({ properties }) => {
      const property = (name: string) => properties.find((one) => one.name === name);
      const text = (name: string) => textsOf(property(name)?.value ?? '').join(',');
      const time = eventTime(property, 'Europe/London');
      return { time, texts: [text('SUMMARY'), text('DESCRIPTION')] };
    });
}

function compare(file: Buffer, theirs: readonly Answer[] | undefined): number {
  const read = ours(file);
  expect(read).toHaveLength(theirs?.length ?? -1);
  let compared = 0;
  for (const [index, { time, texts }] of read.entries()) {
    const { day, minutes, texts: said } = theirs?.[index] ?? { day: null, minutes: null };
    expect(texts).toEqual(said);
    if (day === null || minutes === null || minutes > 1440 || Math.round(minutes) <= 0) {
      expect(time).toHaveProperty('wrong');
      continue;
    }
    const whole = Math.round(minutes);
    const hours = `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
    expect(time).toEqual({ day, hours });
    compared++;
  }
  return compared;
}

const two = (number: number) => String(number).padStart(2, '0');
const wall = fc
  .tuple(
    fc.integer({ min: 0, max: 364 }),
    fc.integer({ min: 0, max: 23 }),
    fc.integer({ min: 0, max: 59 }),
  )
  .map(([day, hour, minute]) => {
    const date = new Date(Date.UTC(2025, 0, 1 + day)).toISOString().slice(0, 10);
    return `${date.replaceAll('-', '')}T${two(hour)}${two(minute)}00`;
  });
const zones = [
  'Europe/London',
  'Europe/Berlin',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
];
const start = fc.oneof(
  fc.tuple(fc.constantFrom(...zones), wall).map(([zone, at]) => `DTSTART;TZID=${zone}:${at}`),
  wall.map((at) => `DTSTART:${at}`),
  wall.map((at) => `DTSTART:${at}Z`),
);
const length = fc.oneof(
  fc.integer({ min: 0, max: 1500 }).map((minutes) => `PT${minutes}M`),
  fc.integer({ min: 0, max: 25 }).map((hours) => `PT${hours}H20M`),
  fc.constantFrom('P1D', 'P2D', 'P1W', 'P0DT5H'),
);
const escaped = (text: string) => text.replace(/[\\;,]/g, '\\$&').replaceAll('\n', '\\n');
// No backslashes here: version 4.0.3 takes those before a semicolon away twice.
const words = fc.string({ unit: fc.constantFrom(...'aé€𝄞 ,;:"\n'), maxLength: 90 });
const calendars = fc
  .array(fc.tuple(start, length, words, words), { minLength: 1, maxLength: 5 })
  .map((events) =>
    calendarOf(
      ...events.map(([begin, lasts, summary, description], index) => {
        const lines = [
          begin,
          `DURATION:${lasts}`,
          `SUMMARY:${escaped(summary)}`,
          `DESCRIPTION:${escaped(description)}`,
        ];
        const folded = lines.map((line) => foldedLine(line).replaceAll('\r\n', '\n'));
        return eventOf(folded.join('').trimEnd(), `${index}@example.com`);
      }),
    ),
  );

describe('Python icalendar', () => {
  test('reads the samples of RFC 5545 as we do', ({ skip }) => {
    skip(!present, ABSENT);
    const files = Object.values(samples).map((sample) => calendarOf(sample));
    const answers = ask(files);
    const compared = files.map((file, index) => compare(file, answers[index]));
    expect(compared.reduce((sum, one) => sum + one)).toBe(4);
  });

  test('reads random events in many zones as we do', ({ skip }) => {
    skip(!present, ABSENT);
    const files = fc.sample(calendars, { numRuns: 300, seed: 7 });
    const answers = ask(files);
    const compared = files.map((file, index) => compare(file, answers[index]));
    expect(compared.reduce((sum, one) => sum + one)).toBeGreaterThan(400);
  });

  test('would catch an hour that is lost, and a backslash', ({ skip }) => {
    skip(!present, ABSENT);
    const file = calendarOf(
      eventOf('DTSTART;TZID=Europe/London:20250330T003000\nDURATION:PT2H\nSUMMARY:a\\, b'),
    );
    const [theirs] = ask([file]);
    expect(compare(file, theirs)).toBe(1);
    const planted = (from: string, to: string) => Buffer.from(file.toString().replace(from, to));
    expect(() => compare(planted('PT2H', 'PT1H'), theirs)).toThrow();
    expect(() => compare(planted('a\\,', 'a\\\\,'), theirs)).toThrow();
  });
});
