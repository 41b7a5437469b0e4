import type { ImportMapping } from '../model/kinds.ts';
import type { Calendar, Component } from './calendar.ts';
import { textsOf } from './calendar-lines.ts';
import { eventTime } from './event-time.ts';
import { type Before, lineOutcomes } from './line-outcomes.ts';
import type { Outcome } from './outcome.ts';
import type { DataLine } from './table.ts';

/** Properties with words, which rules look at and columns may name. */
const WORDS = ['SUMMARY', 'CATEGORIES', 'DESCRIPTION', 'LOCATION', 'STATUS', 'CLASS'] as const;

/** Why a component other than an event gives no row. */
const OTHERS: Readonly<Record<string, string>> = {
  VTODO: 'a to-do says what is to be done and not how long it took',
  VJOURNAL: 'a journal entry has no hours',
  VFREEBUSY: 'free and busy time is no event',
};

/** What becomes of each component of a calendar. An event is a line like those of a table, with its properties as cells. */
export function eventOutcomes(
  calendar: Calendar,
  mapping: ImportMapping,
  timeZone: string,
  before: Before,
): Outcome[] {
  const columns = { what: ['SUMMARY'], ...mapping.columns };
  const asTable = {
    ...mapping,
    columns: { ...columns, date: ['DAY'], hours: ['HOURS'], key: ['UID'] },
    dates: 'YYYY-MM-DD',
  };
  const cancelled = calendar.properties.some(
    ({ name, value }) => name === 'METHOD' && value.trim().toUpperCase() === 'CANCEL',
  );
  const off = (component: Component) =>
    component.name === 'VEVENT' &&
    (cancelled || textOf(component, 'STATUS').toUpperCase() === 'CANCELLED');
  const skipped = calendar.components.filter(off).map(
    (component): Outcome => ({
      line: component.line,
      text: shortText(component),
      is: 'skipped',
      why: 'it was cancelled',
    }),
  );
  const lines = calendar.components
    .filter((component) => !off(component))
    .map((component) => lineOf(component, timeZone));
  const secret = new Set(calendar.components.filter(isSecret).map(({ line }) => line));
  const read = lineOutcomes(lines, asTable, before).map((outcome) =>
    secret.has(outcome.line) ? withheldOrRefused(outcome) : outcome,
  );
  return [...skipped, ...read].sort((a, b) => a.line - b.line);
}

/** CLASS (3.8.1.3): whatever is not public; a class that is not known is to be taken for a private one. */
function isSecret(component: Component): boolean {
  return !['', 'PUBLIC'].includes(textOf(component, 'CLASS').toUpperCase());
}

function withheldOrRefused(outcome: Outcome): Outcome {
  if (outcome.is !== 'added' || /\bwhat\b/.test(outcome.row.fields.withhold ?? '')) return outcome;
  const { line, text } = outcome;
  const why =
    'its CLASS says that it is not for everyone, and its text would be published; set withhold: what';
  return { line, text, is: 'refused', why };
}

function lineOf(component: Component, timeZone: string): DataLine {
  const property = (name: string) => component.properties.find((one) => one.name === name);
  const time =
    component.name === 'VEVENT'
      ? eventTime(property, timeZone)
      : { wrong: OTHERS[component.name] ?? `${component.name} is no event` };
  const broken = structureProblem(component) ?? ('wrong' in time ? time.wrong : undefined);
  const [day, hours] = 'wrong' in time ? ['', ''] : [time.day, time.hours];
  // One event of a series that was moved has the UID of the series, and says which one it was.
  const recurrence = property('RECURRENCE-ID');
  const uid = [textOf(component, 'UID'), recurrence?.params.get('TZID'), recurrence?.value.trim()];
  const words = WORDS.map((name) => [name, textOf(component, name)] as const);
  return {
    line: component.line,
    bytes: Buffer.concat(component.lines.map(({ bytes }) => bytes)),
    text: shortText(component),
    cells: {
      ...Object.fromEntries(words),
      DAY: day,
      HOURS: hours,
      UID: uid.filter((part) => part).join(' '),
    },
    unread: ['DAY', 'HOURS', 'UID'],
    ...(broken === undefined ? {} : { broken }),
  };
}

function structureProblem({ name, properties, inside }: Component): string | undefined {
  if (name !== 'VEVENT') return undefined;
  const bad = properties.find((one) => one.name === '');
  if (bad) return `line ${bad.line} is no content line: ${bad.text}`;
  const nested = inside.find((one) => one.name === 'VEVENT');
  if (nested) return `another event begins in it, on line ${nested.line}`;
  const once = ['DTSTART', 'DTEND', 'DURATION', 'UID', 'RECURRENCE-ID', 'STATUS'];
  const twice = once.find((one) => properties.filter((each) => each.name === one).length > 1);
  if (twice) return `it has ${twice} twice`;
  const repeats = properties.find((one) => one.name === 'RRULE' || one.name === 'RDATE');
  return (
    repeats &&
    `it repeats (${repeats.name}), and a plan to repeat says not which days were worked; make an event of each`
  );
}

/** The texts of a property, which may stand several times; only commas of categories part one from the next. */
function textOf({ properties }: Component, name: string): string {
  const texts = properties
    .filter((one) => one.name === name)
    .flatMap(({ value }) => textsOf(value));
  return texts.join(name === 'CATEGORIES' ? ', ' : ',').trim();
}

function shortText(component: Component): string {
  const start = component.properties.find(({ name }) => name === 'DTSTART')?.value ?? '';
  const told = [start, textOf(component, 'SUMMARY'), textOf(component, 'CATEGORIES')];
  return [component.name === 'VEVENT' ? '' : component.name, ...told]
    .filter((text) => text !== '')
    .join(' · ');
}
