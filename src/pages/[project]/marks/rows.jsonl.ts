import { ledgerFiles } from '../../../publish/ledger-marks.ts';
import { markFile } from '../../../site/mark-file.ts';

export const { getStaticPaths, GET } = markFile(
  'application/jsonl',
  (project) => ledgerFiles(project)['rows.jsonl'],
);
