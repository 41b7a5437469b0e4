import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { rootsAt } from '../trust/growing-root.ts';
import { type Hash, sameBytes } from '../trust/hash.ts';
import type { Mark } from '../trust/mark.ts';
import { type NoteKey, parseKey } from '../trust/note-key.ts';
import { parseMarks } from '../trust/parse-marks.ts';
import { rowLeaf } from '../trust/row-hash.ts';
import { linesOf, type MarkedRow, parseMarkedRow } from './marked-rows.ts';

/** The marks of a project, and what its rows were published as. */
export interface LedgerMarks {
  readonly marks: readonly Mark[];
  /** The rows under the newest mark, as published, in order. */
  readonly rows: readonly MarkedRow[];
  /** The key that signs them, if project.yaml names a good one. */
  readonly key: NoteKey | undefined;
}

/** The marks of a project, or what is wrong with its files of marks. */
export type MarksRead = LedgerMarks | { readonly problems: readonly Problem[] };

const known = new WeakMap<ReadProject, MarksRead>();

/** Reads the marks of a project and holds them against the rows kept beside them; today's ledger is not looked at. */
export function marksOf(project: ReadProject): MarksRead {
  const read = known.get(project) ?? readMarks(project);
  known.set(project, read);
  return read;
}

function readMarks(project: ReadProject): MarksRead {
  const { marks: text = '', rows: rowsText = '' } = project.marks;
  const file = `${project.id}/marks.txt`;
  const { marks, problems } = parseMarks(text);
  if (problems.length > 0)
    return {
      problems: problems.map(({ line, code, message, fix }) =>
        problemAt({ file, line, column: 1 }, code, message, fix),
      ),
    };

  const size = marks.at(-1)?.size ?? 0;
  // A write that broke off between the two files leaves rows that no mark counts yet.
  const lines = linesOf(rowsText).slice(0, size);
  const roots = rootsAt(leavesOf(lines), new Set(marks.map((mark) => mark.size)));
  const broken = marks.find((mark) => {
    const root = roots.get(mark.size);
    return root === undefined || !sameBytes(root, mark.root);
  });
  if (broken) return { problems: [notTheMarkedRows(project, marks, broken, lines.length)] };
  const key = parseKey(project.info?.value.markKey ?? '');
  return { marks, rows: lines.flatMap((line, index) => parseMarkedRow(line, index) ?? []), key };
}

function* leavesOf(lines: readonly string[]): Iterable<Hash> {
  for (const line of lines) yield rowLeaf(line);
}

function notTheMarkedRows(
  { id }: ReadProject,
  marks: readonly Mark[],
  { date, size }: Mark,
  found: number,
): Problem {
  const from = (marks.findLast((mark) => mark.size < size)?.size ?? 0) + 1;
  const wrong =
    found < size
      ? `only ${found} of the ${size} rows marked on ${date} are here`
      : `the rows from ${from} to ${size} are not those marked on ${date}: one of these lines, or the mark in marks.txt, was changed`;
  return problemAt(
    { file: `${id}/marked-rows.jsonl`, line: found < size ? found + 1 : from, column: 1 },
    'marks/rows-differ',
    wrong,
    `restore both files from a backup, or from the published site: ${id}/marks/rows.jsonl and ${id}/marks/marks.txt are the same files`,
  );
}
