import fc from 'fast-check';
import { addDays, type Day } from '../../src/time/day.ts';
import type { Written } from '../book/project-of.ts';

/** A day of the first half of 2025. */
export const writtenDay = fc.nat({ max: 180 }).map((days) => addDays('2025-01-01' as Day, days));

const phaseIds = ['strip', 'floor', 'paint'];
const sourceIds = ['base', 'donor', 'new'];

const hours = fc.record({
  date: writtenDay,
  hours: fc.integer({ min: 0, max: 719 }).map((minutes) => `${minutes} min`),
  phase: fc.constantFrom(...phaseIds),
  work: fc.constantFrom('cleaning', 'fitting'),
  who: fc.constantFrom('ada', 'helper'),
  what: fc.constant('Worked'),
});

const costs = fc.record(
  {
    date: writtenDay,
    amount: fc
      .tuple(fc.integer({ min: 0, max: 99_999 }), fc.constantFrom('', ' EUR'))
      .map(([cents, code]) => `${(cents / 100).toFixed(2)}${code}`),
    category: fc.constantFrom('part', 'tool', 'fee'),
    phase: fc.constantFrom(...phaseIds),
    source: fc.constantFrom(...sourceIds),
    kind: fc.constantFrom('payment', 'sale', 'refund', 'deposit-back'),
    what: fc.constant('Paid'),
  },
  { requiredKeys: ['date', 'amount', 'category', 'phase', 'what'] },
);

/** Five days in their order, some of which are steps of a part. */
const steps = fc
  .tuple(fc.array(writtenDay, { minLength: 5, maxLength: 5 }), fc.nat({ max: 31 }))
  .map(([days, chosen]): Written => {
    const ordered = [...days].sort();
    const names = ['wanted', 'ordered', 'got', 'fitted', 'sold'];
    return Object.fromEntries(
      names.flatMap((name, index) => (chosen & (1 << index) ? [[name, ordered[index] ?? '']] : [])),
    );
  });
const parts = fc.tuple(fc.constantFrom(...sourceIds), steps).map(([source, dates]): Written => {
  return { name: 'A part', system: 'body', source, ...dates };
});

const readings = fc.record({
  date: writtenDay,
  spec: fc.constantFrom('load', 'play'),
  state: fc.constantFrom('as-found', 'before', 'after', 'final'),
  values: fc
    .array(fc.nat({ max: 999 }), { minLength: 1, maxLength: 4 })
    .map((all) => all.join(' ')),
  instrument: fc.constant('gauge'),
});

const rates = fc.record({
  date: writtenDay,
  from: fc.constant('EUR'),
  to: fc.constant('GBP'),
  rate: fc.integer({ min: 5000, max: 15_000 }).map((digits) => (digits / 10_000).toFixed(4)),
  source: fc.constant('a bank'),
});

const phases = phaseIds.map((id) => ({
  ...{ id, name: id, summary: 'Work.' },
  ...{ 'planned-start': '2025-01-01', 'planned-finish': '2025-03-31', 'planned-hours': '40:00' },
}));
const spec = { about: 'Read now and then.', system: 'body', quantity: 'length', unit: 'mm' };

/** Rows of any number with ids of their own. */
const listOf = (row: fc.Arbitrary<Written>, prefix: string) =>
  fc
    .array(row, { maxLength: 12 })
    .map((rows) => rows.map((fields, index): Written => ({ id: `${prefix}-${index}`, ...fields })));

/** The lists of a project in which anything may have happened on any day. */
export const writtenRows = fc.record({
  phases: fc.constant(phases),
  sources: fc.constant(sourceIds.map((id) => ({ id, kind: 'new', name: id }))),
  specs: fc.constant([
    { id: 'load', name: 'Load', ...spec, max: '500 mm' },
    { id: 'play', name: 'Play', ...spec },
  ]),
  instruments: fc.constant([{ id: 'gauge', name: 'Gauge', quantity: 'length', step: '1 mm' }]),
  hours: listOf(hours, 'h'),
  costs: listOf(costs as fc.Arbitrary<Written>, 'c'),
  parts: listOf(parts, 'p'),
  readings: listOf(
    readings.map((row) => ({ ...row, unit: 'mm' })),
    'r',
  ),
  rates: listOf(rates, 'x'),
});
