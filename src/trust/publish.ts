import { consistencyProof } from './consistency.ts';
import { sameBytes, toBase64 } from './hash.ts';
import { type HashTree, hashTree } from './hash-tree.ts';
import { inclusionProof } from './inclusion.ts';
import { type Mark, printMarks } from './mark.ts';
import type { Proof } from './proof.ts';
import { rowLeaf } from './row-hash.ts';

/** The files that a reader downloads into one folder to check the ledger, by their names. */
export interface PublishedLedger {
  readonly 'rows.jsonl': string;
  readonly 'marks.txt': string;
  readonly 'proofs.json': string;
}

/** A mark that the rows of today don't fit. */
export interface BrokenMark {
  readonly mark: Mark;
  readonly failure: 'rows-missing' | 'root-differs';
}

/** The hash tree over the texts of rows, in the order of recording. */
export function treeOf(rows: readonly string[]): HashTree {
  return hashTree(rows.map(rowLeaf));
}

/** The marks that a tree is not an extension of: rows that were marked have changed, moved or gone since. None when all is well. */
export function brokenMarks(tree: HashTree, marks: readonly Mark[]): readonly BrokenMark[] {
  return marks.flatMap((mark): BrokenMark[] => {
    if (mark.size > tree.size) return [{ mark, failure: 'rows-missing' }];
    return sameBytes(tree.root(mark.size), mark.root) ? [] : [{ mark, failure: 'root-differs' }];
  });
}

/**
 * What is published for a ledger: the rows under its newest mark, all its marks, and the proofs. Rows that were recorded since are
 * not in it; they are published with the next mark. With no marks yet the files are empty of rows.
 *
 * @throws when a mark is broken, since there is no proof of it then; ask `brokenMarks` first.
 */
export function publishLedger(rows: readonly string[], marks: readonly Mark[]): PublishedLedger {
  const tree = treeOf(rows);
  if (brokenMarks(tree, marks).length > 0)
    throw new Error('a broken mark can not be published; this is our bug');

  const marked = rows.slice(0, marks.at(-1)?.size ?? 0);
  return {
    'rows.jsonl': marked.map((row) => `${row}\n`).join(''),
    'marks.txt': printMarks(marks),
    'proofs.json': proofsJson(tree, marks),
  };
}

/**
 * `proofs.json`: `inclusion[i]` proves row i (from 0) to the newest mark, `consistency[k]` proves that mark k + 1 extends mark k.
 * Hashes are in base64 as in `marks.txt`; one proof a line.
 */
function proofsJson(tree: HashTree, marks: readonly Mark[]): string {
  const size = marks.at(-1)?.size ?? 0;
  const inclusion = Array.from({ length: size }, (_, row) => inclusionProof(tree, row, size));
  const consistency = marks.slice(1).map((mark, before) => {
    return consistencyProof(tree, marks[before]?.size ?? 0, mark.size);
  });
  return `{"inclusion":${printProofs(inclusion)},\n"consistency":${printProofs(consistency)}}\n`;
}

function printProofs(proofs: readonly Proof[]): string {
  return `[\n${proofs.map((proof) => JSON.stringify(proof.map(toBase64))).join(',\n')}\n]`;
}
