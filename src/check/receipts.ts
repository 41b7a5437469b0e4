import { isFileName } from '../mark/written-fields.ts';
import { suggest } from '../read/nearest.ts';
import { problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** A receipt that is named like a file is one: its hash binds it to the row, so it has to be there when the row is marked. */
export const receiptsExist: Rule = ({ project }) => {
  const there = new Set(project.marks.receipts);
  return project.lists.costs.flatMap(({ raw, value }) => {
    const { receipt } = value;
    if (!isFileName(receipt) || there.has(receipt)) return [];
    const fix =
      suggest(receipt, project.marks.receipts) ??
      `put the file into ${project.id}/receipts/, or write the number of the paper`;
    const message = `receipt: there is no file "${receipt}" in receipts/`;
    return [problemAt(raw.placeOf(['receipt']), 'file/no-receipt', message, fix)];
  });
};
