import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossCheckKey } from '../../src/measure/cross-check.ts';
import { standardUncertainty } from '../../src/measure/uncertain.ts';
import type { Written } from '../book/project-of.ts';
import { figuresIn, measuredProject, workedIn } from '../measure/measured-project.ts';
import { figuresOf } from '../measure/spec-read.ts';

const tenths = (most: number) => fc.integer({ min: 1, max: most }).map((count) => count / 10);
const repeats = fc.array(fc.integer({ min: 90, max: 110 }), { minLength: 1, maxLength: 5 });
const within = (share: number, found: number, want: number) =>
  expect(Math.abs(found - want)).toBeLessThanOrEqual(share * Math.max(Math.abs(want), 1e-12));

describe('a spec in another unit', () => {
  const lengths = ['mm', 'µm', 'in', 'm'] as const;

  test('keeps its verdict and its target, with limits for a length too', () => {
    const limits: fc.Arbitrary<Written> = fc.oneof(
      fc.record({ max: tenths(200).map((most) => `${most} mm`) }),
      fc.record({ min: tenths(200).map((least) => `${least} mm`) }),
      fc.record({
        nominal: tenths(200).map((middle) => `${middle} mm`),
        tolerance: tenths(50).map((width) => `${width} mm`),
      }),
    );
    const spans = fc.constantFrom<Written>(
      {},
      { per: '300 mm', over: '75 mm' },
      { per: '1 ft', over: '2 m' },
    );
    const wanted = fc.constantFrom('lower', 'higher', 'nominal');
    fc.assert(
      fc.property(limits, spans, wanted, tenths(200), repeats, (limit, span, better, aim, read) => {
        const [first, ...others] = lengths.map((unit) => {
          const target = `${aim} mm`;
          const { verdict, reached } = figuresOf({
            spec: { quantity: 'length', unit, ...limit, ...span, target, better },
            instrument: { 'stated-error': '0.1 mm' },
            readings: [{ values: read.map((x) => x / 10).join(' '), unit: 'mm' }],
          });
          return [verdict, reached];
        });
        for (const other of others) expect(other).toEqual(first);
      }),
      { numRuns: 60 },
    );
  });

  test('that is worked out has the same value and U', () => {
    fc.assert(
      fc.property(tenths(500), tenths(500), fc.constantFrom(...lengths), (a, b, unit) => {
        const out = (shown: string, reads: string) => {
          const project = measuredProject({
            specs: {
              a: { unit: reads },
              b: {},
              out: { unit: shown, formula: 'sqrt(a*b) + a', inputs: { a: 'a', b: 'b' } },
            },
            readings: [
              { spec: 'a', values: `${a}`, unit: 'mm', instrument: 'caliper' },
              { spec: 'b', values: `${b}`, instrument: 'caliper' },
            ],
            instruments: [{ id: 'caliper', 'stated-error': '0.2 mm' }],
          });
          const { base, U, nu } = workedIn(project, 'out');
          return { base: base.value, u: standardUncertainty(base.components), known: !!U, nu };
        };
        const [plain, other] = [out('mm', 'mm'), out(unit, unit)];
        within(1e-12, other.base, plain.base);
        within(1e-12, other.u, plain.u);
        expect([other.known, other.nu]).toEqual([plain.known, plain.nu]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('readings', () => {
  test('give the same whatever the order of their values, and of the rows', () => {
    const rows = fc.array(fc.tuple(fc.constantFrom('before', 'after'), repeats), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(rows, (list) => {
        const readings = list.map(([state, values], index) => ({
          ...{ id: `r-${index}`, state, date: `2025-03-${10 + index}` },
          values: values.join(' '),
        }));
        const turned = readings
          .map((row) => ({ ...row, values: row.values.split(' ').reverse().join(' ') }))
          .reverse();
        const instrument = { step: '0.5 kg' };
        const [one, other] = [readings, turned].map((all) =>
          figuresOf({ instrument, readings: all }),
        );
        expect(other?.history.map(({ id }) => id)).toEqual(one?.history.map(({ id }) => id));
        for (const [index, item] of (one?.history ?? []).entries()) {
          within(1e-12, other?.history[index]?.value ?? Number.NaN, item.value);
          within(1e-9, other?.history[index]?.U ?? Number.NaN, item.U ?? Number.NaN);
        }
        expect(other?.change?.changed).toBe(one?.change?.changed);
      }),
      { numRuns: 60 },
    );
  });

  test('from one zero lose exactly what they share when one is taken from the other', () => {
    fc.assert(
      fc.property(repeats, repeats, tenths(100), tenths(20), (before, after, error, step) => {
        const change = (zero: Written) => {
          const common = { spec: 'a', instrument: 'dial', ...zero };
          return figuresIn(
            measuredProject({
              specs: { a: {} },
              readings: [
                { ...common, values: before.join(' '), state: 'before' },
                { ...common, values: after.join(' '), state: 'after', date: '2025-03-02' },
              ],
              instruments: [{ id: 'dial', 'stated-error': `${error} mm`, step: `${step} mm` }],
            }),
            'a',
          ).change;
        };
        const [apart, together] = [change({}), change({ zero: 'morning' })];
        expect(together?.value).toBe(apart?.value);
        const shared = (2 * error ** 2) / 3;
        within(1e-9, (together?.u ?? 0) ** 2, (apart?.u ?? 0) ** 2 - shared);
      }),
      { numRuns: 60 },
    );
  });
});

test('the key of a cross-check changes with every number that goes in, and with nothing else', () => {
  const number = fc.integer({ min: 1, max: 9999 }).map((n) => `${n / 100}`);
  const numbers = fc.record({ a: number, b: number, u: number, step: number, given: number });
  const keyOf = ({ a, b, u, step, given }: Readonly<Record<string, string>>) => {
    const inputs = { a: 'a', b: 'b', c: `5 ± ${given} mm` };
    const project = measuredProject({
      specs: { a: {}, b: {}, out: { formula: 'a + b*c/(b + c)', inputs } },
      readings: ['a', 'b'].map((spec) => ({
        ...{ spec, instrument: 'caliper', values: `${spec === 'a' ? a : b}` },
      })),
      instruments: [{ id: 'caliper', 'stated-error': `${u} mm`, step: `${step} mm` }],
    });
    return crossCheckKey(workedIn(project, 'out'));
  };
  fc.assert(
    fc.property(
      numbers,
      fc.constantFrom('a', 'b', 'u', 'step', 'given'),
      number,
      (all, name, to) => {
        const changed = { ...all, [name]: to };
        expect(keyOf(changed) === keyOf(all)).toBe(to === all[name as 'a']);
      },
    ),
    { numRuns: 60 },
  );
});
