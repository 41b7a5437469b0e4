import type { KeyObject } from 'node:crypto';
import type { Day } from '../../src/time/day.ts';
import type { Mark } from '../../src/trust/mark.ts';
import { treeOf } from '../../src/trust/publish.ts';
import { rowText } from '../../src/trust/row-hash.ts';
import { signMark } from '../../src/trust/sign-mark.ts';

/** The texts of so many cost rows of a made-up ledger. */
export function rowTexts(count: number): string[] {
  return Array.from({ length: count }, (_, index) =>
    rowText({
      kind: 'costs',
      id: `c-${index + 1}`,
      serial: index + 1,
      public: { amount: `${index}.50`, what: 'Primer, grey' },
      private: { supplier: 'Hollis & Daughter' },
      salt: index.toString(16).padStart(32, '0'),
    }),
  );
}

/** Marks of the first rows at these sizes, one a month, signed if there is a key. */
export function marksOf(
  rows: readonly string[],
  sizes: readonly number[],
  key?: KeyObject,
): Mark[] {
  const tree = treeOf(rows);
  return sizes.map((size, index) => {
    const date = `2025-${String(index + 1).padStart(2, '0')}-15` as Day;
    const mark = {
      origin: 'example.org/lapwing',
      size,
      root: tree.root(size),
      date,
      signatures: [],
    };
    return key ? signMark(mark, key) : mark;
  });
}
