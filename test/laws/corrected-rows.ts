import fc from 'fast-check';
import { addDays, type Day } from '../../src/time/day.ts';
import type { Written } from '../book/project-of.ts';
import { writtenRows } from './written-rows.ts';

export type Lists = Readonly<Record<string, readonly Written[]>>;

/** How a row is corrected: to what other amount or length, how many days after it was written down, and whether just withdrawn. */
const slip = fc.record({
  later: fc.nat({ max: 40 }),
  size: fc.integer({ min: 1, max: 300 }),
  withdrawn: fc.boolean(),
  moved: fc.nat({ max: 20 }),
});
type Slip = typeof slip extends fc.Arbitrary<infer Value> ? Value : never;

const phasePortions = fc.constantFrom<string[]>(
  ['strip:1', 'floor:2', 'paint:3'],
  ['strip', 'paint'],
  ['floor:0.5', 'paint:0'],
);

/** Fields of a cost row beyond the plain ones. */
const extras = fc.record(
  {
    portions: phasePortions,
    parts: fc.constantFrom(['p-0:1', 'p-1:2'], ['p-0']),
    share: fc.constantFrom('40 %', '33.3 %'),
    kind: fc.constantFrom('payment', 'deposit', 'gift', 'trade', 'scrap', 'refund'),
    tax: fc.constantFrom('inside', 'outside'),
  },
  { requiredKeys: [] },
);
type Extras = typeof extras extends fc.Arbitrary<infer Value> ? Value : never;

function withExtras(row: Written, { portions, parts, share, kind, tax }: Extras): Written {
  const { phase, ...rest } = row;
  return {
    ...rest,
    ...(portions ? { 'split-phases': portions } : { phase: phase ?? 'strip' }),
    ...(parts ? { 'split-parts': parts } : {}),
    ...(share ? { share } : {}),
    ...(kind ? { kind } : {}),
    ...(tax ? { tax, 'tax-rate': '20 %' } : {}),
  };
}

/** A chain of corrections after a row; the last may be a withdrawal. */
function chain(kind: string, row: Written, slips: readonly Slip[]): Lists {
  const corrections: Written[] = [];
  const withdrawals: Written[] = [];
  let old = row;
  let day = String(row.date) as Day;
  for (const [index, { later, size, withdrawn, moved }] of slips.entries()) {
    day = addDays(day, later + (kind === 'rates' ? 0 : moved));
    const id = `${row.id}-${index + 1}`;
    if (withdrawn && kind !== 'rates') {
      withdrawals.push({ id: `w-${id}`, row: `${old.id}`, date: day, because: 'Never was' });
      break;
    }
    const date = kind === 'rates' ? `${old.date}` : addDays(`${old.date}` as Day, moved);
    const sizes: Record<string, Written> = {
      costs: { amount: `${size}.07` },
      hours: { hours: `${size} min` },
      readings: { values: `${size}` },
      rates: { rate: `0.${size + 500}` },
    };
    old = { ...old, ...sizes[kind], id, date, recorded: day, corrects: `${old.id}` };
    old = { ...old, because: 'It was wrong' };
    corrections.push(old);
  }
  return { [kind]: corrections, withdrawals };
}

const correctable = ['costs', 'hours', 'readings', 'rates'];
const slips = fc.array(fc.tuple(fc.nat(), fc.array(slip, { minLength: 1, maxLength: 3 })), {
  maxLength: 8,
});

/** The lists of a project in which anything may have happened, been split and shared, and been corrected or withdrawn later. */
export const correctedRows: fc.Arbitrary<Lists> = fc
  .tuple(writtenRows, fc.array(extras, { minLength: 12, maxLength: 12 }), slips)
  .map(([lists, more, chosen]) => {
    const plain: Lists = {
      ...lists,
      costs: lists.costs.map((row, index) => withExtras(row, more[index] ?? {})),
    };
    const rows = correctable.flatMap((kind) => (plain[kind] ?? []).map((row) => ({ kind, row })));
    const picked = new Map(
      chosen.map(([pick, all]) => [rows[pick % Math.max(1, rows.length)], all]),
    );
    const chains = [...picked].map(([at, all]) => (at ? chain(at.kind, at.row, all) : {}));
    return Object.fromEntries(
      [...Object.keys(plain), 'withdrawals'].map((kind) => [
        kind,
        [plain, ...chains].flatMap((some: Lists) => some[kind] ?? []),
      ]),
    );
  });

/** The lists as they were written down at the end of a day. */
export function writtenDownBy(lists: Lists, last: Day): Lists {
  const written = (row: Written) => String(row.recorded ?? row.date ?? '') <= last;
  return Object.fromEntries(
    Object.entries(lists).map(([kind, rows]) => [
      kind,
      kind === 'parts' ? rows : rows.filter(written),
    ]),
  );
}
