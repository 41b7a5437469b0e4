import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type Day } from '../../src/time/day.ts';
import { canonicalJson } from '../../src/trust/canonical-json.ts';
import { type Mark, printMarks } from '../../src/trust/mark.ts';
import { parseMarks } from '../../src/trust/parse-marks.ts';

it('canonical JSON means what was put in, whatever the order of its members', () => {
  const shuffled = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(shuffled);
    return Object.fromEntries(
      Object.entries(value)
        .toReversed()
        .map(([k, v]) => [k, shuffled(v)]),
    );
  };
  fc.assert(
    fc.property(fc.jsonValue({ stringUnit: 'binary' }), (value) => {
      const text = canonicalJson(value);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      expect(canonicalJson(shuffled(value))).toBe(text);
      expect(canonicalJson(JSON.parse(text))).toBe(text);
    }),
  );
});

const anyName = fc.stringMatching(/^[!-*,-~]{1,30}$/);
const anySignature = fc.record({
  name: anyName,
  keyId: fc.stringMatching(/^[0-9a-f]{8}$/),
  signature: fc.uint8Array({ minLength: 1, maxLength: 80 }).map((bytes) => Buffer.from(bytes)),
});
const anyMarks = fc
  .tuple(
    anyName,
    fc.array(
      fc.record({
        size: fc.integer({ min: 1, max: 10 ** 6 }),
        days: fc.nat(400),
        root: fc.uint8Array({ minLength: 32, maxLength: 32 }).map((bytes) => Buffer.from(bytes)),
        signatures: fc.array(anySignature, { maxLength: 3 }),
      }),
      { maxLength: 6 },
    ),
  )
  .map(([origin, steps]) => {
    let [size, date] = [0, '2025-01-01' as Day];
    return steps.map(({ days, root, signatures, ...step }): Mark => {
      [size, date] = [size + step.size, addDays(date, days)];
      return { origin, size, root, date, signatures };
    });
  });

describe('marks.txt', () => {
  it('is read as it was printed', () => {
    fc.assert(
      fc.property(anyMarks, (marks) => {
        expect(parseMarks(printMarks(marks))).toEqual({ marks, problems: [] });
      }),
    );
  });

  it('has problems with their lines, or prints as it was read, but is never an error', () => {
    const edits = fc.record({ at: fc.nat(), remove: fc.nat(3), add: fc.string({ maxLength: 3 }) });
    fc.assert(
      fc.property(anyMarks, edits, (marks, { at, remove, add }) => {
        const text = printMarks(marks);
        const start = at % (text.length + 1);
        const edited = text.slice(0, start) + add + text.slice(start + remove);
        const read = parseMarks(edited);
        const lines = edited.split('\n').length;
        if (read.problems.length === 0) expect(printMarks(read.marks)).toBe(edited);
        expect(read.problems.filter(({ line }) => line < 1 || line > lines)).toEqual([]);
      }),
    );
  });
});
