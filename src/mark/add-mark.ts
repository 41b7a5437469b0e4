import type { KeyObject } from 'node:crypto';
import type { ReadProject } from '../read/content.ts';
import type { Day } from '../time/day.ts';
import { rootsAt } from '../trust/growing-root.ts';
import type { Hash } from '../trust/hash.ts';
import { emptyRoot } from '../trust/hash-tree.ts';
import { appendedMark, type Mark } from '../trust/mark.ts';
import { rowLeaf } from '../trust/row-hash.ts';
import { signMark } from '../trust/sign-mark.ts';
import type { LedgerMarks } from './ledger-marks.ts';
import { nextRows } from './next-rows.ts';
import { makeSecret, parseSecrets, printSecrets } from './salts.ts';

/** What one more mark is made from. */
export interface AddOptions {
  /** The name of the ledger, for its first mark. */
  readonly origin: string;
  readonly day: Day;
  readonly privateKey?: KeyObject | undefined;
  readonly randomBytes: (count: number) => Uint8Array;
  /** Whether rows from now on get a new secret. */
  readonly newSecret?: boolean;
}

/** Files that a mark is written into. */
export type MarkFile = 'marks-secret.txt' | 'marked-rows.jsonl' | 'marks.txt';

/** A mark that is ready to be written, with the whole new text of each file that changes. */
export interface AddedMark {
  /** None where only a new secret was asked for, and there was no row to mark. */
  readonly mark: Mark | undefined;
  readonly rows: number;
  /** How many of the rows were marked before and have grown. */
  readonly grown: number;
  readonly files: Readonly<Partial<Record<MarkFile, string>>>;
}

/** One more mark over the rows that have none; undefined when there are no such rows, and no new secret is asked for. */
export function addMark(
  project: ReadProject,
  { marks, rows: marked }: LedgerMarks,
  { origin, day, privateKey, randomBytes, newSecret = false }: AddOptions,
): AddedMark | undefined {
  const kept = parseSecrets(project.marks.secret ?? '') ?? [];
  const fresh = kept.length === 0 || newSecret;
  const secrets = fresh ? [...kept, makeSecret(marked.length + 1, randomBytes)] : kept;
  const { texts, grown } = nextRows(project, marked, { day, secrets });
  const secret = { 'marks-secret.txt': printSecrets(secrets) };
  if (texts.length === 0)
    return newSecret ? { mark: undefined, rows: 0, grown, files: secret } : undefined;

  const lines = [...marked.map(({ text }) => text), ...texts];
  const unsigned: Mark = {
    origin: marks[0]?.origin ?? origin,
    size: lines.length,
    root: rootOver(lines),
    date: day,
    signatures: [],
  };
  const mark = privateKey ? signMark(unsigned, privateKey) : unsigned;
  return {
    mark,
    rows: texts.length,
    grown,
    files: {
      ...secret,
      'marked-rows.jsonl': lines.map((line) => `${line}\n`).join(''),
      'marks.txt': (project.marks.marks ?? '') + appendedMark(mark, marks),
    },
  };
}

function rootOver(lines: readonly string[]): Hash {
  return rootsAt(lines.map(rowLeaf), new Set([lines.length])).get(lines.length) ?? emptyRoot();
}

/** What a ledger goes by: the address of its project without scheme, in the letters that a mark may have. */
export function originOf(address: string, projectId: string): string {
  const { host, pathname } = new URL(address);
  return `${host}${pathname}${projectId}`.replaceAll('+', '%2B');
}
