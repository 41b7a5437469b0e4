import { compareRow, isGrowth, type RowChange } from '../mark/compare.ts';
import { marksOf } from '../mark/ledger-marks.ts';
import { type FoundRow, ledgerRows } from '../mark/ledger-rows.ts';
import type { MarkedRow } from '../mark/marked-rows.ts';
import { parseSecrets } from '../mark/salts.ts';
import { writtenFields } from '../mark/written-fields.ts';
import type { Problem } from '../read/problem.ts';
import type { Mark } from '../trust/mark.ts';
import type { Marked, MarkedLedger } from './marked-ledger.ts';
import { changedRow, goneRow, movedRow, otherKind, otherSecret } from './marked-row-problems.ts';
import type { Rule } from './rule.ts';

/** A row that was marked stays as it was published, where it stood; what was wrong in it is said by another row. */
export const markedRowsStand: Rule = ({ project, today }) => {
  const marks = marksOf(project);
  if ('problems' in marks || marks.rows.length === 0) return [];
  const rows = ledgerRows(project);
  const found = new Map(rows.map((row) => [row.id, row]));
  const ledger = { project, today, marks, rows, found, marked: byId(marks.rows) };
  return [...changedRows(ledger), ...goneRows(ledger), ...movedRows(ledger)];
};

function byId(rows: readonly MarkedRow[]): ReadonlyMap<string, Marked> {
  const marked = new Map<string, Marked>();
  for (const row of rows)
    marked.set(row.id, { first: marked.get(row.id)?.first ?? row, last: row });
  return marked;
}

function changedRows(ledger: MarkedLedger): Problem[] {
  const { project, found } = ledger;
  const secrets = parseSecrets(project.marks.secret ?? '') ?? [];
  const problems: Problem[] = [];
  let hidden = 0;
  const changes: { row: FoundRow; marked: MarkedRow; change: RowChange }[] = [];
  for (const { last: marked } of ledger.marked.values()) {
    const row = found.get(marked.id);
    if (row === undefined) continue;
    if (row.kind !== marked.kind) {
      problems.push(otherKind(row, marked));
      continue;
    }
    const fields = writtenFields(row.kind, row.raw, project.marks);
    const change = compareRow(row, fields, marked, secrets);
    if (marked.privateHash !== undefined) hidden++;
    if (change && !isGrowth(row, change)) changes.push({ row, marked, change });
  }
  // Nobody changes what is private in every row and nothing else: it is the secret that is another.
  const onlyHidden = changes.filter(
    ({ change }) => change.private === 'changed' && change.fields.length === 0,
  );
  if (hidden > 1 && onlyHidden.length === hidden)
    return [...problems, otherSecret(project, hidden)];
  return [...problems, ...changes.map((changed) => changedRow(ledger, changed))];
}

function goneRows(ledger: MarkedLedger): Problem[] {
  const { lost } = ledger.project;
  const marked = [...ledger.marked.values()].map(({ last }) => last);
  // A row with a mistake of its own was not understood, which is not the same as gone.
  return marked
    .filter(({ id }) => !ledger.found.has(id))
    .filter(({ id, kind }) => !lost.kinds.has(kind) && !lost.ids.get(kind)?.includes(id))
    .map((marked) => goneRow(ledger, marked));
}

/** The rows of one mark stand in each file in the order in which they were marked; rows written since may stand anywhere. */
function movedRows(ledger: MarkedLedger): Problem[] {
  const groups = new Map<string, { row: FoundRow; serial: number }[]>();
  const markOf = markFinder(ledger.marks.marks);
  for (const row of ledger.rows) {
    const serial = ledger.marked.get(row.id)?.first.serial;
    if (serial === undefined) continue;
    const key = `${markOf(serial)} ${row.file}`;
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push({ row, serial });
  }
  return [...groups.values()].flatMap((group) => {
    if (group.every(({ serial }, index) => serial > (group[index - 1]?.serial ?? 0))) return [];
    const stays = longestRise(group.map(({ serial }) => serial));
    const inOrder = [...group].sort((a, b) => a.serial - b.serial).map(({ row }) => row);
    return group.flatMap(({ row }, index) => (stays.has(index) ? [] : [movedRow(row, inOrder)]));
  });
}

/** The index of the mark that a row came with. */
function markFinder(marks: readonly Mark[]): (serial: number) => number {
  return (serial) => marks.findIndex(({ size }) => serial <= size);
}

/**
 * Positions of a longest rising choice of numbers, by patience sorting: what is not in it is the least that has moved.
 * `ends[n]` is the position of the smallest number that a rise of n + 1 can end with.
 */
function longestRise(numbers: readonly number[]): ReadonlySet<number> {
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  const at = (position: number | undefined) => numbers[position ?? -1] ?? 0;
  for (const [position, number] of numbers.entries()) {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at(ends[middle]) < number) low = middle + 1;
      else high = middle;
    }
    before.push(ends[low - 1]);
    ends[low] = position;
  }
  const rise = new Set<number>();
  for (let last = ends.at(-1); last !== undefined; last = before[last]) rise.add(last);
  return rise;
}
