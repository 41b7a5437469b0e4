import type { FieldChange, RowChange } from '../mark/compare.ts';
import type { FoundRow } from '../mark/ledger-rows.ts';
import { type MarkedRow, publicFields } from '../mark/marked-rows.ts';
import { factsOfField } from '../mark/written-fields.ts';
import { listKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Place, type Problem, problemAt } from '../read/problem.ts';
import type { RawValue } from '../read/raw.ts';
import { freeId } from './ids.ts';
import type { MarkedLedger } from './marked-ledger.ts';
import { rowExample } from './row-example.ts';

interface Changed {
  readonly row: FoundRow;
  readonly marked: MarkedRow;
  readonly change: RowChange;
}

/** A row that is not what it was published as: each field as it was, and a row to type that says what is right. */
export function changedRow(ledger: MarkedLedger, { row, marked, change }: Changed): Problem {
  const names = privateNames(row);
  const said = change.fields.map((field) => describeChange(field, names));
  if (change.private === 'changed')
    said.push(
      `a field that stays at home changed, which is one of: ${names.join(', ')} (or marks-secret.txt is not the one it was marked with)`,
    );
  if (change.private === 'gained') said.push('a field that stays at home was added');
  const [first] = change.fields;
  const field = first?.field.replace('-sha256', '') ?? names.find((name) => has(row, name)) ?? 'id';
  const message = `the row "${row.id}" was marked on ${markedOn(ledger, marked)} and is not as it was published: ${said.join('; ')}`;
  return problemAt(
    row.raw.placeOf([field]),
    'marks/row-changed',
    message,
    undo(ledger, row, change),
  );
}

function describeChange({ field, was, is }: FieldChange, names: readonly string[]): string {
  if (was === undefined) return `${field} was not there, is now "${shown(is)}"`;
  if (is !== undefined) return `${field} was "${shown(was)}", is now "${shown(is)}"`;
  const where = names.includes(field) ? 'now withheld, though everybody has seen it' : 'now gone';
  return `${field} was "${shown(was)}", is ${where}`;
}

function undo(ledger: MarkedLedger, row: FoundRow, { fields, private: hidden }: RowChange): string {
  const steps = fields.map(undoField);
  if (hidden === 'changed' || hidden === 'gained')
    steps.push('put the field at home back as it was');
  const back = steps.join(', ');
  if (!('corrects' in listKinds[row.kind].shape)) return back;
  return `${back}; what is right goes into a row of its own:\n${rowExample(correction(ledger, row), row.raw)}`;
}

function undoField({ field, was }: FieldChange): string {
  if (was === undefined) return `take ${field} out again`;
  if (field.endsWith('-sha256')) return `put the file back that has the SHA-256 ${shown(was)}`;
  return `write ${field} "${shown(was)}" again`;
}

/** The row as it is now, as a correction of what was published. What stays at home is left out, so that it is in no log. */
function correction(ledger: MarkedLedger, row: FoundRow): Record<string, RawValue> {
  const { id: _, ...fields } = row.raw.value as Record<string, RawValue>;
  for (const name of privateNames(row)) delete fields[name];
  return {
    id: freeId(row.id, takenIds(ledger)),
    ...fields,
    recorded: ledger.today,
    corrects: row.id,
    because: 'why the earlier row was wrong',
  };
}

/** A marked row that is no longer there: where it stood, what it was, and how to take it back instead. */
export function goneRow(ledger: MarkedLedger, marked: MarkedRow): Problem {
  const neighbour = neighbourOf(ledger, marked);
  const { project, today } = ledger;
  const place: Place = neighbour?.raw.placeOf(['id']) ?? {
    file: `${project.id}/marked-rows.jsonl`,
    line: marked.serial,
    column: 1,
  };
  const published = { id: marked.id, ...(publicFields(marked) as Record<string, RawValue>) };
  const taken = {
    id: freeId('w-0', takenIds(ledger)),
    date: today,
    row: marked.id,
    because: 'why it no longer counts',
  };
  const hidden = marked.privateHash ? ', with what it said at home' : '';
  const shape = neighbour?.raw ?? {};
  return problemAt(
    place,
    'marks/row-gone',
    `the row "${marked.id}" of ${marked.kind} was marked on ${markedOn(ledger, marked)} and is gone`,
    [
      `put it back${neighbour ? '' : ` into ledger/${marked.kind}`} as it was published${hidden}:`,
      rowExample(withoutHashes(published), shape),
      'and take it back by a row in ledger/withdrawals:',
      rowExample(taken, neighbour?.raw.columns ? { columns: [] } : {}),
    ].join('\n'),
  );
}

/** The nearest row of its kind that was marked before it and still stands. */
function neighbourOf({ marks, found, rows }: MarkedLedger, { kind, serial }: MarkedRow) {
  const before = marks.rows
    .slice(0, serial - 1)
    .findLast((row) => row.kind === kind && found.get(row.id)?.kind === kind);
  return found.get(before?.id ?? '') ?? rows.find((row) => row.kind === kind);
}

function withoutHashes(fields: Readonly<Record<string, RawValue>>): Record<string, RawValue> {
  return Object.fromEntries(Object.entries(fields).filter(([name]) => !name.endsWith('-sha256')));
}

/** A marked row that stands elsewhere among the rows of its mark. */
export function movedRow(row: FoundRow, inOrder: readonly FoundRow[]): Problem {
  const index = inOrder.indexOf(row);
  const [before, after] = [inOrder[index - 1], inOrder[index + 1]];
  const where = before ? `below "${before.id}"` : `above "${after?.id}"`;
  return problemAt(
    row.raw.placeOf(['id']),
    'marks/row-moved',
    `the row "${row.id}" stood ${where} when it was marked`,
    `move it back ${where}`,
  );
}

/** A row whose id was marked for a row of another kind. */
export function otherKind(row: FoundRow, marked: MarkedRow): Problem {
  return problemAt(
    row.raw.placeOf(['id']),
    'marks/row-kind',
    `the id "${row.id}" was marked for a row of ${marked.kind}, and is now one of ${row.kind}`,
    `put the row back into ledger/${marked.kind}, and give this one another id`,
  );
}

/** All hashes of private fields fail at once. */
export function otherSecret({ id }: ReadProject, rows: number): Problem {
  return problemAt(
    { file: `${id}/marks-secret.txt`, line: 1, column: 1 },
    'marks/secret-differs',
    `the secret is not the one that the marks were made with: it fits none of the ${rows} rows with private fields`,
    'restore marks-secret.txt from a backup',
  );
}

/** Ids of today's rows and of every row that was ever marked. */
function takenIds({ found, marks }: MarkedLedger): Set<string> {
  return new Set([...found.keys(), ...marks.rows.map(({ id }) => id)]);
}

function markedOn({ marks }: MarkedLedger, { serial }: MarkedRow): string {
  return marks.marks.find(({ size }) => serial <= size)?.date ?? '';
}

/** Fields of a row that stay at home: those that always do, and those it withholds. */
function privateNames({ kind, raw }: FoundRow): string[] {
  const withheld = (raw.value as Record<string, RawValue>)['withhold'] ?? [];
  const names = typeof withheld === 'string' ? withheld.split(/\s+/) : (withheld as string[]);
  const always = Object.keys(listKinds[kind].shape).filter(
    (name) => factsOfField(kind, name)?.private,
  );
  return [...always, ...names.filter((name) => name !== '')];
}

function has({ raw }: FoundRow, name: string): boolean {
  return Object.hasOwn(raw.value as object, name);
}

function shown(value: unknown): string {
  const text = Array.isArray(value) ? value.join(' ') : String(value);
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}
