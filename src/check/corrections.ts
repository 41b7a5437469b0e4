import { type Correction, correctionsOf, firstIds } from '../ledger/corrections.ts';
import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Day } from '../time/day.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

interface Row {
  readonly id: string;
  readonly date?: Day | undefined;
  readonly recorded?: Day | undefined;
  readonly corrects?: string | undefined;
  readonly because?: string | undefined;
}

interface Placed {
  readonly kind: RowKind;
  readonly raw: RawRecord;
  readonly row: Row;
}

/** A correction says why and since when, comes after the row it replaces, and there is one for a row; none goes round in a ring. */
export const correctionsHold: Rule = ({ project }) => {
  const placed = new Map<string, Placed>();
  for (const kind of rowKinds)
    for (const { raw, value } of project.lists[kind])
      placed.set(value.id, { kind, raw, row: value });
  const corrections = correctionsOf(project.lists);
  return [
    ...[...placed.values()].flatMap(incomplete),
    ...twice(corrections, placed),
    ...rings(corrections, placed),
    ...corrections.flatMap((correction) => tooEarly(correction, placed)),
    ...withdrawnWrong(project, placed),
  ];
};

function incomplete({ raw, row }: Placed): Problem[] {
  if (row.corrects === undefined) return [];
  const lacks = (field: 'because' | 'recorded', why: string) =>
    row[field] === undefined
      ? [
          problemAt(
            raw.placeOf(['corrects']),
            `correction/no-${field}`,
            `corrects: "${row.corrects}" is replaced without "${field}"`,
            `fill in "${field}": ${why}`,
          ),
        ]
      : [];
  return [
    ...lacks('because', 'why the earlier row was wrong'),
    ...lacks('recorded', 'the day this correction is written down'),
  ];
}

function twice(corrections: readonly Correction[], placed: ReadonlyMap<string, Placed>): Problem[] {
  const first = new Map<string, Correction>();
  return corrections.flatMap((correction) => {
    const earlier = first.get(correction.old);
    if (earlier === undefined) {
      first.set(correction.old, correction);
      return [];
    }
    const verb = earlier.by === undefined ? 'withdrawn' : 'replaced';
    const doing = correction.by === undefined ? 'withdraw' : 'correct';
    const fix =
      earlier.by === undefined
        ? 'write it anew as a row of its own'
        : `${doing} "${earlier.by}" instead`;
    return [
      problemAt(
        placeIn(placed, correction),
        'correction/twice',
        `"${correction.old}" is ${verb} already, by "${earlier.said}"`,
        fix,
      ),
    ];
  });
}

function placeIn(placed: ReadonlyMap<string, Placed>, { said, by }: Correction) {
  const raw = (placed.get(said) as Placed).raw;
  return raw.placeOf([by === undefined ? 'row' : 'corrects']);
}

function rings(corrections: readonly Correction[], placed: ReadonlyMap<string, Placed>): Problem[] {
  const next = new Map(corrections.flatMap(({ old, by }) => (by ? [[by, old] as const] : [])));
  const told = new Set<string>();
  return corrections.flatMap((correction) => {
    const ring = ringFrom(correction.said, next);
    if (ring === undefined || ring.some((id) => told.has(id))) return [];
    for (const id of ring) told.add(id);
    const chain = [...ring, ring[0]].map((id) => `"${id}"`).join(' corrects ');
    return [
      problemAt(
        placeIn(placed, correction),
        'correction/ring',
        `the corrections go round in a ring: ${chain}`,
        'let the first of them correct nothing',
      ),
    ];
  });
}

function ringFrom(start: string, next: ReadonlyMap<string, string>): string[] | undefined {
  const trail: string[] = [];
  for (let id: string | undefined = start; id !== undefined; id = next.get(id)) {
    if (trail.includes(id)) return id === start ? trail : undefined;
    trail.push(id);
  }
  return undefined;
}

/** What is written down is older than its correction. */
function tooEarly(correction: Correction, placed: ReadonlyMap<string, Placed>): Problem[] {
  const old = placed.get(correction.old)?.row;
  const written = old?.recorded ?? old?.date;
  if (written === undefined || correction.on >= written) return [];
  const field = correction.by === undefined ? 'date' : 'recorded';
  return [
    problemAt(
      (placed.get(correction.said) as Placed).raw.placeOf([field]),
      'correction/early',
      `${field}: "${correction.on}" is before "${correction.old}" was written down (${written})`,
      'write the day of the correction',
    ),
  ];
}

/** A withdrawal is of a row that stands by itself: not of a withdrawal, nor of a part or an order that other rows name. */
function withdrawnWrong(project: ReadProject, placed: ReadonlyMap<string, Placed>): Problem[] {
  const firstId = firstIds(correctionsOf(project.lists));
  return project.lists.withdrawals.flatMap(({ raw, value }): Problem[] => {
    const kind = placed.get(value.row)?.kind;
    const at = raw.placeOf(['row']);
    if (kind === 'withdrawals') {
      const wrong = `row: "${value.row}" is a withdrawal itself`;
      return [
        problemAt(at, 'correction/withdrawal', wrong, 'write the withdrawn row anew instead'),
      ];
    }
    const user =
      kind === 'parts' || kind === 'orders' ? whoNames(project, value.row, firstId) : undefined;
    if (user === undefined) return [];
    const wrong = `row: "${value.row}" is still named by "${user}"`;
    return [
      problemAt(
        at,
        'correction/named',
        wrong,
        `correct "${user}" first, or correct the row instead`,
      ),
    ];
  });
}

/** A row that still counts and names the part or order, by the id of whichever of its rows. */
function whoNames(
  project: ReadProject,
  id: string,
  firstId: (id: string) => string,
): string | undefined {
  const costs = standingRows(project, 'costs').map(({ value }) => ({
    id: value.id,
    names: [
      value.order,
      ...(value.parts ?? []),
      ...(value.splitParts ?? []).map((part) => part.id),
    ],
  }));
  const orders = standingRows(project, 'orders').map(({ value }) => ({
    id: value.id,
    names: value.parts ?? [],
  }));
  const searches = standingRows(project, 'searches').map(({ value }) => ({
    id: value.id,
    names: [value.part],
  }));
  const first = firstId(id);
  return [...costs, ...orders, ...searches].find(({ names }) =>
    names.some((name) => name !== undefined && firstId(name) === first),
  )?.id;
}
