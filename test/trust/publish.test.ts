import { describe, expect, it } from 'vitest';
import { verifyConsistency } from '../../src/trust/consistency.ts';
import { fromBase64 } from '../../src/trust/hash.ts';
import { verifyInclusion } from '../../src/trust/inclusion.ts';
import { parseMarks } from '../../src/trust/parse-marks.ts';
import { brokenMarks, publishLedger, treeOf } from '../../src/trust/publish.ts';
import { rowLeaf } from '../../src/trust/row-hash.ts';
import { marksOf, rowTexts } from './small-ledger.ts';

const rows = rowTexts(12);
const marks = marksOf(rows, [3, 4, 10]);
const files = publishLedger(rows, marks);
const proofs: { inclusion: string[][]; consistency: string[][] } = JSON.parse(files['proofs.json']);
const hashes = (proof: string[] = []) => proof.map((text) => fromBase64(text) ?? Buffer.of());

describe('a published ledger', () => {
  it('has the rows under its newest mark, one a line, and not those recorded since', () => {
    expect(files['rows.jsonl'].split('\n')).toEqual([...rows.slice(0, 10), '']);
  });

  it('has its marks as they are kept', () => {
    expect(parseMarks(files['marks.txt'])).toEqual({ marks, problems: [] });
  });

  it('proves each row to the newest mark', () => {
    const [, , newest] = marks;
    if (!newest) throw new Error('there are three marks');
    const results = rows.slice(0, 10).map((row, index) => {
      const claim = { leaf: rowLeaf(row), index, size: 10, root: newest.root };
      return verifyInclusion(claim, hashes(proofs.inclusion[index])).holds;
    });
    expect(results).toEqual(Array(10).fill(true));
    expect(proofs.inclusion.length).toBe(10);
  });

  it('proves each mark to extend the one before', () => {
    const results = marks.slice(1).map((to, index) => {
      const from = marks[index] ?? to;
      const roots = { firstRoot: from.root, secondRoot: to.root };
      const claim = { first: from.size, second: to.size, ...roots };
      return verifyConsistency(claim, hashes(proofs.consistency[index])).holds;
    });
    expect(results).toEqual([true, true]);
    expect(proofs.consistency.length).toBe(2);
  });

  it('has no rows before the first mark', () => {
    expect(publishLedger(rows, [])).toEqual({
      'rows.jsonl': '',
      'marks.txt': '',
      'proofs.json': '{"inclusion":[\n\n],\n"consistency":[\n\n]}\n',
    });
  });
});

describe('marks are broken', () => {
  const broken = (changed: readonly string[]) =>
    brokenMarks(treeOf(changed), marks).map(({ mark, failure }) => [mark.size, failure]);

  it('by nothing that is only added', () => {
    expect(broken([...rows, ...rowTexts(3)])).toEqual([]);
  });

  it('from the first one over a changed row on', () => {
    expect(broken(rows.with(3, '{}'))).toEqual([
      [4, 'root-differs'],
      [10, 'root-differs'],
    ]);
  });

  it('by two rows that changed places, and by one that was put in between', () => {
    const [a = '', b = '', ...rest] = rows;
    expect(broken([b, a, ...rest]).length).toBe(3);
    expect(broken([a, '{}', b, ...rest]).length).toBe(3);
  });

  it('by rows that are gone', () => {
    expect(broken(rows.slice(0, 9))).toEqual([[10, 'rows-missing']]);
  });

  it('not at all by changes to rows that were never marked', () => {
    expect(broken(rows.with(10, '{}'))).toEqual([]);
  });

  it('and then nothing is published', () => {
    expect(() => publishLedger(rows.with(3, '{}'), marks)).toThrow('this is our bug');
  });
});
