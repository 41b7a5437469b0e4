import { ledgerFiles } from '../../../publish/ledger-marks.ts';
import { markFile } from '../../../site/mark-file.ts';

export const { getStaticPaths, GET } = markFile(
  'text/plain',
  (project) => ledgerFiles(project)['marks.txt'],
);
